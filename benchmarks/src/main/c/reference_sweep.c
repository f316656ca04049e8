/* Sweeps one deck through ngspice's shared library. Timed: setting the switches plus the operating point.
 *
 *   reference_sweep DECK STATES VECTORS ANSWERS
 *
 * STATES has one line a setting: commands separated by ';'. VECTORS names the voltages wanted, one a line. ANSWERS gets one
 * line of voltages a setting, or the word lost. Prints processor microseconds a setting. */
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <ngspice/sharedspice.h>

static int trouble;

static int on_text(char *text, int id, void *user) {
  (void)id; (void)user;
  if (strstr(text, "too small") || strstr(text, "aborted") || strstr(text, "No convergence") || strstr(text, "singular")
      || strstr(text, "failed"))
    trouble = 1;
  return 0;
}
static int on_status(char *text, int id, void *user) { (void)text; (void)id; (void)user; return 0; }
static int on_exit_asked(int status, NG_BOOL now, NG_BOOL quit, int id, void *user) {
  (void)now; (void)quit; (void)id; (void)user;
  exit(status ? status : 1);
}

static char **read_lines(const char *path, int *count) {
  FILE *file = fopen(path, "r");
  char **lines = NULL, *line = NULL;
  size_t room = 0;
  ssize_t length;
  *count = 0;
  if (!file) { perror(path); exit(1); }
  while ((length = getline(&line, &room, file)) >= 0) {
    if (length && line[length - 1] == '\n') line[length - 1] = 0;
    lines = realloc(lines, sizeof(char *) * (size_t)(*count + 2));
    lines[(*count)++] = strdup(line);
  }
  lines[*count] = NULL;
  fclose(file);
  return lines;
}

static double now_us(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (double)t.tv_sec * 1e6 + (double)t.tv_nsec / 1e3;
}

int main(int argc, char **argv) {
  if (argc != 5) { fprintf(stderr, "usage: reference_sweep DECK STATES VECTORS ANSWERS\n"); return 2; }
  int deck_lines, states, vectors;
  char **deck = read_lines(argv[1], &deck_lines);
  char **state = read_lines(argv[2], &states);
  char **vector = read_lines(argv[3], &vectors);
  FILE *answers = fopen(argv[4], "w");
  ngSpice_Init(on_text, on_text, on_exit_asked, NULL, NULL, NULL, NULL);
  (void)on_status;
  if (ngSpice_Circ(deck)) { fprintf(stderr, "deck refused\n"); return 1; }
  double spent = 0;
  for (int k = 0; k < states; k++) {
    char *copy = strdup(state[k]);
    trouble = 0;
    double begin = now_us();
    for (char *command = strtok(copy, ";"); command; command = strtok(NULL, ";")) ngSpice_Command(command);
    ngSpice_Command("op");
    spent += now_us() - begin;
    free(copy);
    if (trouble) { fprintf(answers, "lost\n"); continue; }
    for (int v = 0; v < vectors; v++) {
      pvector_info info = ngGet_Vec_Info(vector[v]);
      fprintf(answers, v ? " %.12g" : "%.12g", info && info->v_length > 0 ? info->v_realdata[info->v_length - 1] : 0.0);
    }
    fprintf(answers, "\n");
    ngSpice_Command("destroy all");
  }
  fclose(answers);
  printf("%.3f\n", spent / states);
  return 0;
}
