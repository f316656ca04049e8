/* Lets ngspice's shared library do one thing after another with one deck. Timed: the commands, the last of which analyses.
 *
 *   reference_run DECK COMMANDS VECTORS ANSWERS
 *
 * COMMANDS has one line a run: commands separated by ';'. VECTORS names what is wanted of each run, one a line. ANSWERS gets,
 * for every run, how many points it has (none when the simulator lost its way) and then point by point what is wanted, all as
 * doubles of the machine. Prints processor microseconds a run. */
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
static int on_exit_asked(int status, NG_BOOL now, NG_BOOL quit, int id, void *user) {
  (void)now; (void)quit; (void)id; (void)user;
  exit(status ? status : 1);
}

static char **read_lines(const char *path, int *count) {
  FILE *file = fopen(path, "r");
  char **lines = calloc(1, sizeof(char *)), *line = NULL;
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

static void write_answers(FILE *answers, char **vector, int vectors) {
  double points = 0;
  const double **wanted = malloc(sizeof(double *) * (size_t)(vectors + 1));
  for (int v = 0; v < vectors; v++) {
    pvector_info info = trouble ? NULL : ngGet_Vec_Info(vector[v]);
    if (!info || info->v_length <= 0) { points = 0; break; }
    points = info->v_length;
    wanted[v] = info->v_realdata;
  }
  fwrite(&points, sizeof points, 1, answers);
  for (int p = 0; p < (int)points; p++)
    for (int v = 0; v < vectors; v++) fwrite(&wanted[v][p], sizeof(double), 1, answers);
  free(wanted);
}

int main(int argc, char **argv) {
  if (argc != 5) { fprintf(stderr, "usage: reference_run DECK COMMANDS VECTORS ANSWERS\n"); return 2; }
  int deck_lines, runs, vectors;
  char **deck = read_lines(argv[1], &deck_lines);
  char **run = read_lines(argv[2], &runs);
  char **vector = read_lines(argv[3], &vectors);
  FILE *answers = fopen(argv[4], "w");
  ngSpice_Init(on_text, on_text, on_exit_asked, NULL, NULL, NULL, NULL);
  if (ngSpice_Circ(deck)) { fprintf(stderr, "deck refused\n"); return 1; }
  double spent = 0;
  for (int k = 0; k < runs; k++) {
    trouble = 0;
    double begin = now_us();
    for (char *command = strtok(run[k], ";"); command; command = strtok(NULL, ";")) ngSpice_Command(command);
    spent += now_us() - begin;
    write_answers(answers, vector, vectors);
    ngSpice_Command("destroy all");
  }
  fclose(answers);
  printf("%.3f\n", spent / runs);
  return 0;
}
