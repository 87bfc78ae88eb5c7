#include "words/columns.h"

#include <string.h>
#include <unistr.h>
#include <uniwidth.h>

/* The bytes of the sign at `text`, and its width in *columns. */
static size_t sign_at(const char *text, size_t length, size_t *columns) {
    *columns = 1;
    if ((unsigned char)text[0] < 0x80)
        return 1;
    ucs4_t sign = 0;
    int n = u8_mbtouc(&sign, (const uint8_t *)text, length);
    int width = uc_width(sign, "UTF-8");
    *columns = width < 0 ? 0 : (size_t)width;
    return n < 1 ? 1 : (size_t)n;
}

size_t gb_columns(const char *text, size_t length) {
    size_t used = 0;
    size_t columns = 0;
    for (size_t i = 0; i < length; used += columns)
        i += sign_at(text + i, length - i, &columns);
    return used;
}

size_t gb_fitting(const char *text, size_t room) {
    size_t length = strcspn(text, "\n");
    if (length <= room) /* no sign is wider than its bytes are many */
        return length;
    size_t used = 0;
    size_t last_break = 0;
    size_t columns = 0;
    for (size_t i = 0; i < length;) {
        size_t n = sign_at(text + i, length - i, &columns);
        if (text[i] == ' ')
            last_break = i;
        used += columns;
        if (used > room)
            return last_break > 0 ? last_break : i > 0 ? i : n;
        i += n;
    }
    return length;
}
