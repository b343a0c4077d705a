using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.TextForm;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Asking;

/// <summary>The answers of one kind that were asked for last, finished or on their way: a page that is loaded again has its own at once.</summary>
/// <typeparam name="TAnswer">In finished words.</typeparam>
internal sealed class LatestAnswers<TAnswer>
{
    private const int Most = 16;

    private readonly Lock turn = new();
    private readonly List<(string Key, Task<TAnswer> Answer)> kept = [];

    /// <summary>So long a page waits for an answer before it is sent without. A browser without script then has it too.</summary>
    public TimeSpan Patience { get; } = TimeSpan.FromMilliseconds(1500);

    /// <param name="query">The whole address, behind its question mark.</param>
    /// <param name="kitchen">As it is now: its file may have changed.</param>
    public Task<TAnswer> For(RecipeFile file, string query, Kitchen kitchen, Voice voice, Func<TAnswer> work) =>
        For(string.Join('\n', file.Name, StateId.OfText(file.Text), query, voice.Measures, KitchenText.Write(kitchen)), work);

    /// <param name="key">All that the answer follows from.</param>
    public Task<TAnswer> For(string key, Func<TAnswer> work)
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
