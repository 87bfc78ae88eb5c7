#include "gaugebox/mix.h"

#include <string.h>

const char *gb_words_in(const gb_words *words, const char *language) {
    const char *english = NULL;
    for (size_t i = 0; i < words->count; i++) {
        if (strcmp(words->phrases[i].language, language) == 0)
            return words->phrases[i].text;
        if (strcmp(words->phrases[i].language, "en") == 0)
            english = words->phrases[i].text;
    }
    if (english != NULL)
        return english;
    return words->count > 0 ? words->phrases[0].text : "";
}
