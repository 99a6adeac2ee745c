/*
 * CIEDE2000 in plain C, written as the standard prints it: the yardstick of colour.bench.ts.
 * Reads pairs as six columns of doubles (L1 a1 b1 L2 a2 b2) from stdin after their count (a double), then for each
 * byte of a line feed on stdin times one pass and prints its milliseconds and the sum of all differences.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double difference(double L1, double a1, double b1, double L2, double a2, double b2) {
  const double pi = 3.14159265358979323846, pivot = 6103515625.0;
  double C = (sqrt(a1 * a1 + b1 * b1) + sqrt(a2 * a2 + b2 * b2)) / 2;
  double C7 = C * C * C * C * C * C * C;
  double G = 0.5 * (1 - sqrt(C7 / (C7 + pivot)));
  double p1 = a1 * (1 + G), p2 = a2 * (1 + G);
  double c1 = sqrt(p1 * p1 + b1 * b1), c2 = sqrt(p2 * p2 + b2 * b2);
  double h1 = c1 == 0 ? 0 : atan2(b1, p1), h2 = c2 == 0 ? 0 : atan2(b2, p2);
  if (h1 < 0) h1 += 2 * pi;
  if (h2 < 0) h2 += 2 * pi;
  double dh = h2 - h1, hm = h1 + h2;
  if (c1 * c2 == 0) {
    dh = 0;
  } else if (fabs(h1 - h2) > pi) {
    dh += dh > 0 ? -2 * pi : 2 * pi;
    hm = hm < 2 * pi ? (hm + 2 * pi) / 2 : (hm - 2 * pi) / 2;
  } else {
    hm /= 2;
  }
  double dH = 2 * sqrt(c1 * c2) * sin(dh / 2), Lm = (L1 + L2) / 2 - 50, Cm = (c1 + c2) / 2;
  double T = 1 - 0.17 * cos(hm - pi / 6) + 0.24 * cos(2 * hm) + 0.32 * cos(3 * hm + pi / 30)
           - 0.2 * cos(4 * hm - 63 * pi / 180);
  double d = (hm * 180 / pi - 275) / 25, turn = pi / 3 * exp(-d * d);
  double Cm7 = Cm * Cm * Cm * Cm * Cm * Cm * Cm;
  double RC = 2 * sqrt(Cm7 / (Cm7 + pivot));
  double l = (L2 - L1) / (1 + 0.015 * Lm * Lm / sqrt(20 + Lm * Lm));
  double c = (c2 - c1) / (1 + 0.045 * Cm), h = dH / (1 + 0.015 * Cm * T);
  return sqrt(l * l + c * c + h * h - sin(turn) * RC * c * h);
}

int main(void) {
  double count;
  if (fread(&count, sizeof count, 1, stdin) != 1) return 1;
  size_t n = (size_t)count;
  double *in = malloc(6 * n * sizeof *in), *out = malloc(n * sizeof *out);
  if (!in || !out || fread(in, sizeof *in, 6 * n, stdin) != 6 * n) return 1;
  while (getchar() == '\n') {
    struct timespec start, end;
    clock_gettime(CLOCK_MONOTONIC, &start);
    for (size_t i = 0; i < n; i++)
      out[i] = difference(in[i], in[n + i], in[2 * n + i], in[3 * n + i], in[4 * n + i], in[5 * n + i]);
    clock_gettime(CLOCK_MONOTONIC, &end);
    double sum = 0;
    for (size_t i = 0; i < n; i++) sum += out[i];
    printf("%.6f %.17g\n", (end.tv_sec - start.tv_sec) * 1e3 + (end.tv_nsec - start.tv_nsec) / 1e6, sum);
    fflush(stdout);
  }
  return 0;
}
