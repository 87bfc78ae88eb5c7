/* The language that a run speaks, from --lang alone: the environment has no say, so that
   the same command prints the same bytes for everyone. */
#ifndef CLI_LANGUAGE_H
#define CLI_LANGUAGE_H

/* Looks for --lang before any other option is read, because help and faults come in that
   language too. A --lang that stands before the command is moved behind it. Returns the
   exit status to end with when there is no such language, else GB_EXIT_DONE. */
int gb_choose_language(int argc, char **argv);

#endif
