/* The yardstick of the bench: parses the named files with libconfig and does nothing
   else. */
#include <libconfig.h>
#include <stdio.h>

int main(int argc, char **argv) {
    for (int i = 1; i < argc; i++) {
        config_t config;
        config_init(&config);
        if (config_read_file(&config, argv[i]) != CONFIG_TRUE) {
            (void)fprintf(stderr, "%s: %s\n", argv[i], config_error_text(&config));
            return 1;
        }
        config_destroy(&config);
    }
    return 0;
}
