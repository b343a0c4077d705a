using Doughwright.Engine.Cases;

namespace Doughwright.Engine.Tests.Cases;

/// <summary>Texts of cases for tests of the reader. Their figures mean nothing.</summary>
internal static class CaseSamples
{
    public const string Ball = """
        doughwright: 1
        case: ball
        title: A ball
        kind: cooling
        source:
          title: Nobody
          read: from memory
          licence: ours
        conditions:
          shape: ball
          mass: 500 g
          specific heat: 2.77 kJ/kgK
          density: 1150 kg/m3
          conductivity: 0.45 W/(m K)
          start: 26 C
          air: 4 C
          coefficient: 8 W/(m² K)
        measured:
          core temperature:
            tolerance: 1 K
            because: made up
            points:
              - 30 min, 24 C
              - 1 h, 20 to 21 C
              - 2 h, 57 F, within 2 F

        """;

    public static CaseReading Read(string text, string? table = null) => CaseText.Read(text, _ => table);

    public static CaseReading With(string piece, string instead, string? table = null)
    {
        Assert.Contains(piece, Ball);
        return Read(Ball.Replace(piece, instead, StringComparison.Ordinal), table);
    }

    /// <summary>Kind and line of everything that was found.</summary>
    public static (string Kind, int Line, int Column)[] Found(CaseReading reading) =>
        [.. reading.Findings.Select(finding => (finding.Kind, finding.Position.Line, finding.Position.Column))];
}
