using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Cases;

/// <summary>The models of a rehearsal, set to the conditions of one case.</summary>
internal interface ICaseModel
{
    /// <summary>What the models say at the places of a series.</summary>
    CaseAnswer Answer(CaseSeries series);
}

/// <summary>What the models say: at every point one value per lane in the base of the quantity, lane 0 the likely one; or why there is nothing.</summary>
internal sealed record CaseAnswer(IReadOnlyList<double[]> Lanes, Finding? Refusal)
{
    public static CaseAnswer Of(IEnumerable<double[]> lanes) => new([.. lanes], null);

    /// <summary>The same question at every point, each answered by itself.</summary>
    public static CaseAnswer Each(CaseSeries series, Func<double, double[]> at) => Of(series.Points.Select(point => at(point.Place)));

    public static CaseAnswer Refused(string kind, Grade grade, params ReadOnlySpan<(string Name, object Value)> arguments)
    {
        var told = new Dictionary<string, object>();
        foreach (var (name, value) in arguments)
        {
            told[name] = value;
        }

        return new([], new() { Kind = kind, Grade = grade, Place = "", Arguments = told });
    }

    /// <summary>There is no model of this quantity yet.</summary>
    public static CaseAnswer NoModel(CaseSeries series) => Refused(CaseFaults.NoModel, Grade.Warning, ("quantity", series.Quantity));
}
