namespace Doughwright.Engine.Rehearsals;

/// <summary>When the one pair of hands, or the one oven, is taken: stretches of time, the latest first.</summary>
internal sealed class Busy
{
    /// <summary>What ends where the next begins does not overlap, whatever the last digit says.</summary>
    private const double Hair = 1e-9;

    private readonly List<(double From, double To)> stretches = [];

    public void Add(double from, double to)
    {
        var index = 0;
        while (index < stretches.Count && stretches[index].From >= from)
        {
            index++;
        }

        stretches.Insert(index, (from, to));
    }

    /// <summary>The latest start, not after <paramref name="from"/>, of a free stretch of that length.</summary>
    public double FreeBefore(double from, double minutes)
    {
        foreach (var stretch in stretches)
        {
            if (from < stretch.To - Hair && from + minutes > stretch.From + Hair)
            {
                from = stretch.From - minutes;
            }
        }

        return from;
    }
}
