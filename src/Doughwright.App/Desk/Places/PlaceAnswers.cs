namespace Doughwright.App.Desk.Places;

/// <summary>The answers that were asked for last, finished or on their way: a page that is loaded again has its own at once.</summary>
internal sealed class PlaceAnswers
{
    private const int Most = 16;

    private readonly Lock turn = new();
    private readonly List<(string Key, Task<PlaceView> Answer)> kept = [];

    /// <param name="key">All that the answer depends on.</param>
    public Task<PlaceView> For(string key, Func<PlaceView> work)
    {
        lock (turn)
        {
            kept.RemoveAll(one => one.Answer.IsFaulted);
            if (kept.Find(one => one.Key == key).Answer is { } there)
            {
                return there;
            }

            if (kept.Count == Most)
            {
                kept.RemoveAt(0);
            }

            var answer = Task.Run(work);
            kept.Add((key, answer));
            return answer;
        }
    }
}
