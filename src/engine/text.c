#include "gaugebox/text.h"
#include "gaugebox/count.h"

#include <math.h>
#include <string.h>

void gb_text_init(gb_text *text, gb_arena *arena) {
    *text = (gb_text){.arena = arena};
}

static bool make_room(gb_text *text, size_t more) {
    if (text->failed)
        return false;
    if (text->room - text->length > more)
        return true;
    size_t room = (text->room + more + 32) * 2;
    char *data = gb_arena_take(text->arena, room, 1);
    if (data == NULL) {
        text->failed = true;
        return false;
    }
    if (text->length > 0)
        memcpy(data, text->data, text->length);
    text->data = data;
    text->room = room;
    return true;
}

void gb_text_add_bytes(gb_text *text, const char *more, size_t count) {
    if (!make_room(text, count))
        return;
    memcpy(text->data + text->length, more, count);
    text->length += count;
    text->data[text->length] = '\0';
}

void gb_text_add(gb_text *text, const char *more) {
    gb_text_add_bytes(text, more, strlen(more));
}

void gb_text_add_char(gb_text *text, char c) {
    gb_text_add_repeated(text, c, 1);
}

void gb_text_add_repeated(gb_text *text, char c, size_t count) {
    if (!make_room(text, count))
        return;
    memset(text->data + text->length, c, count);
    text->length += count;
    text->data[text->length] = '\0';
}

const char *gb_text_get(const gb_text *text) {
    return text->data == NULL ? "" : text->data;
}

/* How many bytes the steering sign that `at` begins with takes; 0 when it is none. */
static size_t steering(const char *at) {
    unsigned char a = (unsigned char)at[0];
    if (a < ' ' || a == 127)
        return 1;
    unsigned char b = (unsigned char)at[1];
    if (a == 0xC2 && b >= 0x80 && b <= 0x9F)
        return 2;
    if (a != 0xE2 || b == 0)
        return 0;
    unsigned char c = (unsigned char)at[2];
    bool turns =
        (b == 0x80 && c >= 0xAA && c <= 0xAE) || (b == 0x81 && c >= 0xA6 && c <= 0xA9);
    return turns ? 3 : 0;
}

void gb_text_add_clean(gb_text *text, const char *more) {
    while (*more != '\0') {
        size_t n = steering(more);
        if (n > 0)
            gb_text_add_char(text, '?');
        else
            gb_text_add_bytes(text, more, 1);
        more += n > 0 ? n : 1;
    }
}

/* Digits of value, at least `least` of them, leading zeros filled in. */
static void add_digits(gb_text *text, uint64_t value, int least) {
    char digits[24];
    int n = 0;
    while (value > 0 || n < least) {
        digits[n++] = (char)('0' + value % 10);
        value /= 10;
    }
    while (n > 0)
        gb_text_add_char(text, digits[--n]);
}

int gb_cut(const char *text, int most) {
    int n = 0;
    while (n < most && text[n] != '\0')
        n++;
    while (n > 0 && ((unsigned char)text[n] & 0xC0) == 0x80)
        n--;
    return n;
}

void gb_text_add_int(gb_text *text, int64_t value) {
    if (value < 0)
        gb_text_add_char(text, '-');
    uint64_t size = value < 0 ? 0 - (uint64_t)value : (uint64_t)value;
    add_digits(text, size, 1);
}

static const double HAIR = 1e-12; /* of the value, and never over a thousandth */

void gb_text_add_fixed(gb_text *text, double value, int decimals) {
    static const int64_t POWERS[] = {1,      10,      100,      1000,      10000,
                                     100000, 1000000, 10000000, 100000000, 1000000000};
    int64_t power = POWERS[decimals];
    double scaled = value * (double)power;
    if (!(fabs(scaled) < 9e15)) {
        gb_text_add_char(text, '?');
        return;
    }
    /* A half that a sum has left a hair below itself still rounds away from zero. */
    double hair = gb_smaller(HAIR * gb_larger(1.0, fabs(scaled)), 1e-3);
    int64_t whole = llround(scaled + copysign(hair, scaled));
    if (whole < 0)
        gb_text_add_char(text, '-');
    uint64_t size = (uint64_t)(whole < 0 ? -whole : whole);
    add_digits(text, size / (uint64_t)power, 1);
    if (decimals == 0)
        return;
    gb_text_add_char(text, '.');
    add_digits(text, size % (uint64_t)power, decimals);
}

void gb_text_add_fraction(gb_text *text, double value, int parts) {
    double scaled = value * parts;
    if (!(fabs(scaled) < 9e15)) {
        gb_text_add_char(text, '?');
        return;
    }
    int64_t count = llround(scaled);
    if (count < 0)
        gb_text_add_char(text, '-');
    uint64_t size = (uint64_t)(count < 0 ? -count : count);
    uint64_t over = size % (uint64_t)parts;
    uint64_t whole = size / (uint64_t)parts;
    if (whole > 0 || over == 0)
        add_digits(text, whole, 1);
    if (over == 0)
        return;
    if (whole > 0)
        gb_text_add_char(text, '-');
    uint64_t under = (uint64_t)parts;
    for (; over % 2 == 0; over /= 2)
        under /= 2;
    add_digits(text, over, 1);
    gb_text_add_char(text, '/');
    add_digits(text, under, 1);
}
