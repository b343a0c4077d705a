namespace Doughwright.Engine.Heat.Warming;

/// <summary>Temperatures of a warm place, minute by minute; minute 0 is when the dough goes in.</summary>
internal sealed class PlaceTrace(int lead, int minutes)
{
    private readonly PlaceState[] states = new PlaceState[lead + minutes + 1];

    public int Lead { get; } = lead;

    public int Minutes { get; } = minutes;

    public PlaceState this[int minute] => states[minute + Lead];

    public void Set(int minute, PlaceState state) => states[minute + Lead] = state;

    /// <summary>Mean over the first so many minutes with the dough, by the trapezium rule.</summary>
    public double Mean(Func<PlaceState, double> of, int over)
    {
        var sum = (of(this[0]) + of(this[over])) / 2;
        for (var minute = 1; minute < over; minute++)
        {
            sum += of(this[minute]);
        }

        return sum / over;
    }

    /// <summary>Minutes among the first so many in which something is no farther from a temperature than so many kelvins.</summary>
    public int Within(Func<PlaceState, double> of, double celsius, double kelvins, int over)
    {
        var count = 0;
        for (var minute = 1; minute <= over; minute++)
        {
            count += Math.Abs(of(this[minute]) - celsius) <= kelvins ? 1 : 0;
        }

        return count;
    }
}
