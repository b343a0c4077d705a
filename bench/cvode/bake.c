/*
 * The bake that solvers are measured with, by CVODE: a sphere of 50 equal shells, a convective surface, constant conductivity, and water that boils
 * in a bell about 100 C. Kitchens come in as text on standard input, one a line:
 *     start oven transfer latent fourier
 * with start and oven in C, transfer h R/k, latent in K, and how long it bakes in Fourier number. Cores at six even marks go out, one line a
 * kitchen, then one line "seconds S" for all of them, the best of three passes.
 * Backward differences, banded matrix, analytic Jacobian. Arguments: relative and absolute tolerance, and 1 to set up the matrix at every step.
 */
#define _POSIX_C_SOURCE 199309L
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

#define CELLS 50
#define MARKS 6
#define WIDTH 2.5

typedef struct { double start, oven, into, latent, fourier; } kitchen;

static double volume[CELLS], face[CELLS];
static kitchen now;

static double capacity(double celsius, double *slope)
{
    double e = exp(-fabs(celsius - 100) / WIDTH);
    double bell = e / ((1 + e) * (1 + e));
    double tilt = (celsius < 100 ? 1 : -1) * (1 - e) / (1 + e);
    *slope = now.latent / WIDTH * bell * tilt / WIDTH;
    return 1 + now.latent / WIDTH * bell;
}

static int rate(double t, N_Vector y, N_Vector dy, void *user)
{
    double *T = N_VGetArrayPointer(y), *d = N_VGetArrayPointer(dy), in = 0, slope;
    (void)t; (void)user;
    for (int i = 0; i < CELLS; i++) {
        double out = i < CELLS - 1 ? face[i] * (T[i + 1] - T[i]) : now.into * (now.oven - T[i]);
        d[i] = (out - in) / (volume[i] * capacity(T[i], &slope));
        in = out;
    }
    return 0;
}

static int jacobian(double t, N_Vector y, N_Vector dy, SUNMatrix J, void *user, N_Vector a, N_Vector b, N_Vector c)
{
    double *T = N_VGetArrayPointer(y), *d = N_VGetArrayPointer(dy), slope;
    (void)t; (void)user; (void)a; (void)b; (void)c;
    for (int i = 0; i < CELLS; i++) {
        double held = capacity(T[i], &slope), per = 1 / (volume[i] * held), own = 0;
        if (i > 0) { SM_ELEMENT_B(J, i, i - 1) = face[i - 1] * per; own -= face[i - 1]; }
        if (i < CELLS - 1) { SM_ELEMENT_B(J, i, i + 1) = face[i] * per; own -= face[i]; } else own -= now.into;
        SM_ELEMENT_B(J, i, i) = own * per - d[i] * slope / held;
    }
    return 0;
}

int main(int argc, char **argv)
{
    double relative = argc > 1 ? atof(argv[1]) : 3e-4, absolute = argc > 2 ? atof(argv[2]) : 3e-4;
    int often = argc > 3 ? atoi(argv[3]) : 1, count = 0, room = 1024;
    kitchen *all = malloc(room * sizeof *all);
    double transfer, width = 1.0 / CELLS;
    SUNContext context;
    for (int i = 0; i < CELLS; i++) {
        double r = i * width, R = (i + 1) * width;
        volume[i] = (R * R * R - r * r * r) / 3;
        face[i] = R * R / width;
    }
    for (kitchen k; scanf("%lf %lf %lf %lf %lf", &k.start, &k.oven, &transfer, &k.latent, &k.fourier) == 5; all[count++] = k) {
        double half = (1 - width / 2) / (width / 2);
        k.into = half * transfer / (half + transfer);
        if (count == room) all = realloc(all, (room *= 2) * sizeof *all);
    }
    double *core = malloc(count * MARKS * sizeof *core);
    if (SUNContext_Create(NULL, &context)) return 70;
    N_Vector y = N_VNew_Serial(CELLS, context);
    SUNMatrix A = SUNBandMatrix(CELLS, 1, 1, context);
    SUNLinearSolver solver = SUNLinSol_Band(y, A, context);
    void *cvode = CVodeCreate(CV_BDF, context);
    N_VConst(20, y);
    CVodeInit(cvode, rate, 0, y);
    CVodeSStolerances(cvode, relative, absolute);
    CVodeSetLinearSolver(cvode, solver, A);
    CVodeSetJacFn(cvode, jacobian);
    CVodeSetMaxNumSteps(cvode, 1000000);
    if (often) { CVodeSetLSetupFrequency(cvode, 1); CVodeSetJacEvalFrequency(cvode, 1); }
    double best = 1e300;
    for (int pass = 0; pass < 3; pass++) {
        struct timespec before, after;
        clock_gettime(CLOCK_MONOTONIC, &before);
        for (int k = 0; k < count; k++) {
            now = all[k];
            N_VConst(now.start, y);
            if (CVodeReInit(cvode, 0, y)) return 71;
            for (int mark = 1; mark <= MARKS; mark++) {
                double t, *T = N_VGetArrayPointer(y);
                if (CVode(cvode, now.fourier * mark / MARKS, y, &t, CV_NORMAL) < 0) return 72;
                core[k * MARKS + mark - 1] = T[0];
            }
        }
        clock_gettime(CLOCK_MONOTONIC, &after);
        double seconds = (after.tv_sec - before.tv_sec) + 1e-9 * (after.tv_nsec - before.tv_nsec);
        if (seconds < best) best = seconds;
    }
    for (int k = 0; k < count; k++)
        printf("%.9f %.9f %.9f %.9f %.9f %.9f\n", core[k * 6], core[k * 6 + 1], core[k * 6 + 2], core[k * 6 + 3], core[k * 6 + 4], core[k * 6 + 5]);
    printf("seconds %.9f\n", best);
    return 0;
}
