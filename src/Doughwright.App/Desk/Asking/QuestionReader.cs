using Doughwright.App.Commands;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Asking;

/// <summary>
/// Reads a question with the code of the command line. Everything that can be understood is used; what cannot is refused, in the words that the command
/// line has for it. What people write never throws.
/// </summary>
/// <param name="name">Name of the recipe's file, for the command line to be shown.</param>
internal sealed class QuestionReader(Recipe recipe, string name, ShelfFolder shelf, Words words)
{
    /// <summary>More than any person asks, and few enough to try one by one.</summary>
    private const int MostItems = 64;

    private const string File = "recipe";

    /// <summary>What is told together: a dough temperature and what may be warmed for it, air by the clock and when work starts.</summary>
    private static readonly IReadOnlyList<string>[] Pairs = [[Question.Dough, Question.Free], [Question.Air, Question.Start]];

    private static readonly string[] Repeatable = ["at", "bowl", "variant", "weighed"];

    public Understood Read(Question question, MeasureSystem measures)
    {
        var voice = new Voice(words, measures);
        var refusals = new List<Refusal>();
        var items = question.Items.Where(item => item.Name != Question.AsWrittenName).ToArray();
        foreach (var item in items.Skip(MostItems))
        {
            refusals.Add(Refused(item, voice, "question-too-long", ("most", MostItems)));
        }

        var known = new List<Asked>();
        foreach (var item in items.Take(MostItems))
        {
            if (Question.Known.Contains(item.Name))
            {
                known.Add(item);
            }
            else
            {
                refusals.Add(Refusal.Unknown(item, Question.Known, voice));
            }
        }

        var read = Try(known, voice);
        if (read.Faults.Count > 0)
        {
            (known, read) = OneByOne(known, voice, refusals);
        }

        var flags = question.Items.Where(item => item.Name == Question.AsWrittenName).Take(1);
        return new(
            question.Only(known.Concat(flags)),
            read.Request,
            read.Request.Kitchen ?? recipe.Home,
            known.Find(item => item.Name == Question.Kitchen) is { } asked ? KitchenAsked.FileOf(asked.Value, shelf) : null,
            refusals,
            read.KitchenFindings,
            CommandLineText.Of(name, known, shelf));
    }

    private sealed record Reading(Request Request, IReadOnlyList<Finding> KitchenFindings, IReadOnlyList<Fault> Faults);

    private (List<Asked> Known, Reading Read) OneByOne(List<Asked> asked, Voice voice, List<Refusal> refusals)
    {
        var kept = new List<Asked>();
        var read = Try(kept, voice);
        foreach (var group in Groups(asked))
        {
            var tried = Try([.. kept, .. group], voice);
            if (tried.Faults.Count == 0)
            {
                kept.AddRange(group);
                read = tried;
                continue;
            }

            var guilty = Guilty(group, tried.Faults, voice);
            refusals.AddRange(tried.Faults.Select(fault => Refusal.Of(guilty, fault)));
            // The start stays of use when only the air is refused.
            Asked[] rest = [.. group.Where(item => item.Name != guilty.Name)];
            if (rest.Length > 0 && Try([.. kept, .. rest], voice) is { Faults.Count: 0 } without)
            {
                kept.AddRange(rest);
                read = without;
            }
        }

        return (kept, read);
    }

    /// <summary>The one of a group whose own value cannot be read; the first when only all together cannot be.</summary>
    private Asked Guilty(IReadOnlyList<Asked> group, IReadOnlyList<Fault> together, Voice voice) => group
        .FirstOrDefault(item => Try([item], voice).Faults.Any(together.Contains), group[0]);

    private static IEnumerable<IReadOnlyList<Asked>> Groups(IReadOnlyList<Asked> asked)
    {
        var done = new HashSet<Asked>(ReferenceEqualityComparer.Instance);
        foreach (var item in asked)
        {
            if (done.Contains(item))
            {
                continue;
            }

            var names = Pairs.FirstOrDefault(pair => pair.Contains(item.Name)) ?? [item.Name];
            Asked[] group = Repeatable.Contains(item.Name) ? [item] : [.. asked.Where(other => names.Contains(other.Name))];
            done.UnionWith(group);
            yield return group;
        }
    }

    private Reading Try(IReadOnlyList<Asked> asked, Voice voice)
    {
        var options = new Options();
        var faults = new Faults(voice, FieldNames.Of(words));
        string[] arguments = [options.Rehearse.Name, File, .. asked.Where(item => item.Name != Question.Kitchen).Select(item => item.Argument)];
        var given = new Given(options.Parse(arguments), faults);
        if (given.One(options.Measures) is { } system)
        {
            given.Word(options.Measures.Name, system, MeasureNames.All);
        }

        var overlay = KitchenOptions.Read(given, options);
        var named = KitchenAsked.Find([.. asked.Where(item => item.Name == Question.Kitchen).Select(item => item.Value)], shelf, faults);
        var kitchen = overlay.IsEmpty ? named.Kitchen : overlay.Over(named.Kitchen ?? recipe.Home);
        var request = RequestOptions.Read(given, options, recipe, kitchen);
        if (!faults.Any && request.Pour is not null)
        {
            // Where water boils is known once the kitchen has been worked out.
            given.Temperature(options.Pour, RequestOptions.Pourable(Rehearser.Rehearse(recipe, Larder.Shipped, new() { Kitchen = kitchen }, 1).Boils));
        }

        return new(request, named.Findings, faults.All);
    }

    private static Refusal Refused(Asked item, Voice voice, string kind, params ReadOnlySpan<(string, object?)> arguments)
    {
        var faults = new Faults(voice);
        faults.Add(kind, arguments);
        return Refusal.Of(item, faults.All[0]);
    }
}
