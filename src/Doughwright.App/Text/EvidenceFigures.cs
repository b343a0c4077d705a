using Doughwright.Engine.Cases;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>The figures of a series in words: as many decimals as its tolerance asks for.</summary>
internal sealed class EvidenceFigures(SeriesResult result, Voice voice)
{
    private const int MostDecimals = 5;

    private readonly int decimals = DecimalsOf(result.Series);

    /// <summary>"Core temperature": what was measured, and against what.</summary>
    public string Head() => voice.Say("evidence-quantity", ("quantity", Capital(result.Series.Quantity)));

    /// <summary>What it was measured along, for the head of a column; nothing for a single figure.</summary>
    public string Along() => result.Series.Along.Length == 0 ? "" : voice.Words[$"along.{result.Series.Along.Replace(' ', '-')}"];

    public string[] Row(PointResult point) =>
    [
        point.Measured.At is { } at ? voice.Text(at) : "",
        point.Measured.IsRange ? voice.Say("range", ("low", Number(point.Measured.Low)), ("high", Number(point.Measured.High))) : Number(point.Measured.Value),
        point.Computed is { } computed ? Number(computed) : voice.Words["evidence-never"],
        Range(point),
        point.Error is { } error ? Signed(error) : "",
        point.Within ? "" : voice.Words["evidence-row-out"],
    ];

    /// <summary>"In: ...", "Out: ...", with how far off and what the range holds.</summary>
    public string Verdict() => voice.Say(
        "evidence-verdict",
        ("verdict", voice.Words[result.Within == true ? "evidence-in-word" : "evidence-out-word"]),
        ("scores", Short()),
        ("range", result.PointsWithRange == 0 ? voice.Words["evidence-no-range"] : voice.Say("evidence-range-holds", ("held", result.PointsInRange), ("all", result.PointsWithRange))));

    /// <summary>How far off, in one go.</summary>
    public string Short() => result is { RootMeanSquare: { } root, Bias: { } bias, MaxError: { } most }
        ? voice.Say(
            result.Points.Count == 1 ? "evidence-score-one" : "evidence-scores",
            ("within", result.PointsWithin),
            ("points", result.Points.Count),
            ("root", With(Number(root))),
            ("bias", With(Signed(bias))),
            ("most", With(Number(most))))
        : voice.Say("evidence-score-never", ("within", result.PointsWithin), ("points", result.Points.Count));

    private string Range(PointResult point) => point switch
    {
        { InRange: null } => "",
        { Low: { } low, High: { } high } => voice.Say("range", ("low", Number(low)), ("high", Number(high))),
        { Low: { } low } => voice.Say("range-open", ("low", Number(low))),
        _ => voice.Words["evidence-never"],
    };

    private string With(string number) => result.Series.Unit.Length == 0 ? number : number + "\u00a0" + result.Series.Unit;

    public string Number(double value) => Show.Number(value, decimals);

    private string Signed(double value) => Math.Round(value, decimals) > 0 ? "+" + Number(value) : Number(value);

    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>Of a range without a tolerance a tenth of its width tells.</summary>
    private static double FinestOf(CasePoint point) => point.Tolerance > 0 ? point.Tolerance : (point.High - point.Low) / 4;

    private static int DecimalsOf(CaseSeries series)
    {
        var finest = series.Points.Min(FinestOf);
        return finest > 0 ? (int)Math.Clamp(Math.Ceiling(0.9 - Math.Log10(finest)), 0, MostDecimals) : 2;
    }
}
