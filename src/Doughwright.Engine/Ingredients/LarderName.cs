namespace Doughwright.Engine.Ingredients;

/// <summary>One name of a row.</summary>
/// <param name="Name">As it stands in the table.</param>
/// <param name="Normal">Brought to one form: lower case, singular, no accents.</param>
/// <param name="When">Conditions that choose the row, in normal form.</param>
/// <param name="StandsAlone">Whether the name means the row when no condition chooses.</param>
/// <param name="Regions">Where it means this row, when it means another elsewhere; empty means everywhere.</param>
/// <param name="Note">What to know of the name, such as what butter may hold by law; empty when nothing. Source: butter-law-us, butter-law-eu.</param>
internal sealed record LarderName(
    string Name, string Normal, string[] Words, Ingredient Ingredient, string[] When, bool StandsAlone, Region[] Regions, string Note)
{
    public static LarderName Of(string name, Ingredient ingredient, string[] when, Region[] regions, string note)
    {
        var normal = Phrase.Normal(name);
        var conditions = when.Where(condition => condition != "*").Select(Phrase.Normal).ToArray();
        return new(name, normal, normal.Split(' '), ingredient, conditions, when.Length == 0 || when.Contains("*"), regions, note);
    }

    public bool Holds(Region? region) => region is not { } here || Regions.Length == 0 || Regions.Contains(here);

    /// <summary>Words of the longest condition that was said; 0 when none was.</summary>
    public int LongestFit(IReadOnlyList<string> said)
    {
        var longest = 0;
        foreach (var condition in When)
        {
            var length = condition.AsSpan().Count(' ') + 1;
            if (length > longest && said.Any(text => Phrase.Holds(text, condition)))
            {
                longest = length;
            }
        }

        return longest;
    }
}
