using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.Telling;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>How warm the dough is to be after mixing, and by the warmth of what: a sentence with its choice.</summary>
internal static class DoughView
{
    /// <summary>Nothing when there is no dough whose temperature is known, or nothing in it that could be warmed.</summary>
    public static Told Of(Figures figures)
    {
        var (state, voice) = (figures.State, figures.Voice);
        var asked = state.Setting.Question;
        var free = asked.First(Question.Free);
        if ((state.Offer is null || Keeping.HomeDough(figures.Home) is null) && free is null)
        {
            return Told.Nothing;
        }

        var choice = new Field(Question.Free, voice.Words["recipe.field.free"], free ?? "", "")
        {
            Choices = [.. Choices(figures, free), new("", voice.Words["recipe.as-written"])],
            Refusal = state.Setting.RefusalOf(Question.Free),
        };
        if (free is null)
        {
            return Told.Say(voice, "recipe.dough-written", ("choice", choice));
        }

        var wanted = state.Setting.Read.Request.Dough ?? Keeping.HomeDough(figures.Home)!.Value;
        var refusal = state.Setting.RefusalOf(Question.Dough);
        var text = (refusal is null ? null : FieldUnit.Bare(Question.Dough, refusal.Typed, state.Measures)) ?? state.Setting.Typing.GetValueOrDefault(Question.Dough) ?? FieldUnit.Number(wanted, state.Measures);
        var dough = new Field(Question.Dough, voice.Words["recipe.field.dough"], text, FieldUnit.Shown(Question.Dough, state.Measures)) { Refusal = refusal };
        return Told.Say(voice, "recipe.dough-kept", ("dough", dough), ("choice", choice));
    }

    /// <summary>All that would be warmed together, then each of it alone, and what is asked for now if that is something else.</summary>
    private static IEnumerable<Choice> Choices(Figures figures, string? free)
    {
        var lines = figures.State.Offer?.Lines ?? [];
        var all = new List<string>();
        if (lines.Count > 0)
        {
            all.Add(string.Join(',', lines));
        }

        all.AddRange(lines.Count > 1 ? lines : []);
        if (free is not null && !all.Contains(free))
        {
            all.Add(free);
        }

        return all.Select(ids => new Choice(ids, figures.NamesOf(ids.Split(',').Select(id => id.Trim()))));
    }
}
