using System.Runtime.ExceptionServices;

namespace Doughwright.Book.Papers;

/// <summary>Those who wait to hear that a paper is in another state.</summary>
internal static class Listeners
{
    /// <summary>Tells them all in turn. None keeps another from being told: what they throw comes out at the end, as it was when one alone threw.</summary>
    /// <exception cref="AggregateException">Several of them threw.</exception>
    public static void Tell(Action<PaperSort, string>? listeners, PaperSort sort, string name)
    {
        List<Exception> faults = [];
        foreach (var listener in Delegate.EnumerateInvocationList(listeners))
        {
            try
            {
                listener(sort, name);
            }
            catch (Exception fault)
            {
                faults.Add(fault);
            }
        }

        if (faults.Count > 1)
        {
            throw new AggregateException(faults);
        }

        if (faults.Count == 1)
        {
            ExceptionDispatchInfo.Throw(faults[0]);
        }
    }
}
