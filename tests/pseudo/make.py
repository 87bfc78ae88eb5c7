"""Makes the pseudo-language xx: make.py CHECKOUT FOLDER writes a catalog, a mix table and
jobs into FOLDER, beside a copy of the program that looks for them there."""
import pathlib
import re
import shutil
import subprocess
import sys

import polib

LETTERS = str.maketrans("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ",
                        "áƀćďéƒǵĥíĵķĺḿńóƥɋŕśťúṽŵẋýźÁɃĆĎÉƑǴĤÍĴĶĹḾŃÓƤɊŔŚŤÚṼŴẊÝŹ")
# What the program fills in must stay: {figures}, places for printf.
KEPT = re.compile(r"(\{[a-z_]+\}|%(?:\.\d+|\.\*)?(?:zu|[sdc%])|\\.)")
WORD = re.compile(r"[A-Za-z]+(?:'[a-z]+)?")
# The texts of a job or a price book that are its writer's own.
TEXTS = re.compile(r'\b((?:title|source|purpose|not_for) = )"[^"\n]*"')
# A job's mixes are called by their names, and have texts instead.
MIXES = re.compile(r"^mixes = \(.*?^\);", re.M | re.S)
OWN = re.compile(r'\b((?:name|place|emergency|rinse_water|washout|supplier|currency) = )"[^"\n]*"')


def longer(match):
    """A word in other signs, 40 % longer. Its apostrophe is no quote any more."""
    word = match.group().replace("'", "’").translate(LETTERS)
    return word + "ø" * -(-len(word) * 4 // 10)


def pseudo(text):
    parts = KEPT.split(text)
    return "".join(p if i % 2 else WORD.sub(longer, p) for i, p in enumerate(parts))


def make_catalog(pot, folder):
    folder.mkdir(parents=True)
    catalog = polib.pofile(str(pot))
    catalog.metadata["Plural-Forms"] = "nplurals=2; plural=(n != 1);"
    for entry in catalog:
        if entry.msgid_plural:
            entry.msgstr_plural = {0: pseudo(entry.msgid), 1: pseudo(entry.msgid_plural)}
        else:
            entry.msgstr = pseudo(entry.msgid)
        entry.flags = [flag for flag in entry.flags if flag != "fuzzy"]
    catalog.save_as_mofile(str(folder / "gaugebox.mo"))


def in_both(match):
    return f'{{ en = "{match.group(1)}"; xx = "{pseudo(match.group(1))}"; }}'


def make_mixes(mixes, folder):
    folder.mkdir(parents=True)
    text = r'"((?:[^"\\]|\\.)*)"'
    for file in mixes.glob("*.cfg"):
        words = re.sub(r"\{ en = " + text + r"; \}", in_both, file.read_text())
        words = re.sub(r"(?<=source = )" + text, in_both, words)
        (folder / file.name).write_text(words)


def make_jobs(top, folder):
    """Copies of all examples and job tests; what their writers called things becomes a
    number, so that no word of theirs can be taken for one of ours."""
    for kind in ("examples", "tests/jobs"):
        for case in (top / kind).glob("*/"):
            to = folder / ("good" if kind == "examples" else "tests") / case.name
            shutil.copytree(case, to)
            if (to / "make.sh").exists():
                subprocess.run(["bash", "make.sh"], cwd=to, check=True)
            names = {}
            for file in filter(pathlib.Path.is_file, to.glob("*.cfg")):
                text = file.read_bytes().decode("utf-8", "surrogateescape")
                mixes = MIXES.search(text)
                begin, end = mixes.span() if mixes else (len(text), len(text))
                replace = lambda m: m.group(1) + '"Ω%d"' % \
                    names.setdefault(m.group(), len(names))
                text = (OWN.sub(replace, text[:begin]) +
                        TEXTS.sub(replace, text[begin:end]) + OWN.sub(replace, text[end:]))
                file.write_bytes(text.encode("utf-8", "surrogateescape"))


def main():
    top, work = map(pathlib.Path, sys.argv[1:])
    make_catalog(top / "src/po/gaugebox.pot", work / "share/locale/xx/LC_MESSAGES")
    make_mixes(top / "mixes", work / "share/gaugebox/mixes")
    # Mixes that are not what they claim: every word of such cautions.
    make_mixes(top / "tests/cli/own-mix-claims-several/mine", work / "claims")
    make_jobs(top, work / "jobs")


if __name__ == "__main__":
    main()
