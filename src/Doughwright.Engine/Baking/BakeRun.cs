using System.Runtime.CompilerServices;
using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking;

/// <summary>One pack of lanes on its way through a bake. The arrays are allocated when it is made and never after.</summary>
internal struct BakeRun<T>(BakeGrid grid) where T : struct, ILane<T>
{
    private readonly T[] now = new T[grid.Cells];
    private readonly T[] before = new T[grid.Cells];
    private readonly T[] opened = new T[grid.Cells];
    private readonly T[] partial = new T[grid.Cells];
    private T oven;
    private T boil;
    private T biot;

    /// <summary>
    /// Temperature in the middle. A parabola through the means of the two innermost shells, level in the middle: the mean of r² over them
    /// is 3/5 and 93/35 of a squared width.
    /// </summary>
    public readonly T Core => now[0] - (T.Of(7.0 / 24) * (now[1] - now[0]));

    /// <summary>Mean over the volume.</summary>
    public readonly T Mean
    {
        get
        {
            var sum = T.Of(0);
            for (var cell = 0; cell < now.Length; cell++)
            {
                sum += T.Of(grid.Volume[cell]) * now[cell];
            }

            return T.Of(3) * sum;
        }
    }

    public void Begin(BakeLanes lanes, int lane)
    {
        oven = T.Load(lanes.Oven, lane);
        boil = T.Load(lanes.Boil, lane);
        biot = T.Load(lanes.Biot, lane);
        Array.Fill(now, T.Load(lanes.Start, lane));
    }

    /// <param name="step">Steps taken before.</param>
    public readonly void Advance(int step)
    {
        if (step >= grid.Opening)
        {
            Take(grid.Whole, T.Of(2), T.Of(0.5));
            return;
        }

        now.CopyTo(opened, 0);
        for (var part = 0; part < grid.Parts; part++)
        {
            if (step == 0 && part == 0)
            {
                Take(grid.Start, T.Of(1), T.Of(0));
            }
            else
            {
                Take(grid.Part, T.Of(2), T.Of(0.5));
            }
        }

        // A whole step looks back by a whole step.
        if (step == grid.Opening - 1)
        {
            opened.CopyTo(before, 0);
        }
    }

    /// <summary>One implicit step; the two weights are those of the last temperatures and of the ones before.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private readonly void Take(BakeElimination factors, T newer, T older)
    {
        var half = T.Of(grid.HalfCell);
        var into = half * biot / (half + biot);
        var last = grid.Cells - 1;
        var carried = T.Of(0);
        for (var cell = 0; cell < last; cell++)
        {
            var held = T.Of(factors.Capacity[cell]) * ((newer * now[cell]) - (older * before[cell]));
            carried = (held + carried) * T.Of(factors.Share[cell]);
            partial[cell] = carried;
            carried = carried * T.Of(grid.Conductance[cell]);
        }

        var right = (T.Of(factors.Capacity[last]) * ((newer * now[last]) - (older * before[last]))) + carried;
        var own = T.Of(factors.LastOwn);
        var heated = (right + (into * oven)) / (own + into);
        var surface = ((half * heated) + (biot * oven)) / (half + biot);
        var boiling = (right + (half * boil)) / (own + half);
        var next = T.WhereLess(boil, surface, boiling, heated);
        before[last] = now[last];
        now[last] = next;
        for (var cell = last - 1; cell >= 0; cell--)
        {
            next = (T.Of(factors.Follow[cell]) * next) + partial[cell];
            before[cell] = now[cell];
            now[cell] = next;
        }
    }
}
