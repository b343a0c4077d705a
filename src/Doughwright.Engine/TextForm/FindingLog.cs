using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>Collects what is wrong in one text, with the line quoted.</summary>
internal sealed class FindingLog(SourceText source)
{
    private readonly List<Finding> findings = [];
    private int untold;

    /// <summary>The findings in the order of the text.</summary>
    public IReadOnlyList<Finding> Findings => untold == 0
        ? [.. findings.OrderBy(finding => (finding.Position.Line, finding.Position.Column))]
        : [.. findings.OrderBy(finding => (finding.Position.Line, finding.Position.Column)), More()];

    /// <summary>From here on findings are only counted, so nothing needs to be worked out for them.</summary>
    public bool IsFull => findings.Count >= TextCaps.Findings;

    /// <summary>Something that could not be understood.</summary>
    public void Fault(string kind, string place, Position position, params (string Name, object Value)[] arguments) =>
        Add(kind, Grade.Error, true, place, position, arguments);

    /// <summary>Something understood, and wrong.</summary>
    public void Wrong(string kind, string place, Position position, params (string Name, object Value)[] arguments) =>
        Add(kind, Grade.Error, false, place, position, arguments);

    public void Warn(string kind, string place, Position position, params (string Name, object Value)[] arguments) =>
        Add(kind, Grade.Warning, false, place, position, arguments);

    public void Hint(string kind, string place, Position position, params (string Name, object Value)[] arguments) =>
        Add(kind, Grade.Hint, false, place, position, arguments);

    private void Add(string kind, Grade grade, bool notUnderstood, string place, Position position, (string Name, object Value)[] arguments)
    {
        if (IsFull)
        {
            untold++;
            return;
        }

        findings.Add(new()
        {
            Kind = kind,
            Grade = grade,
            NotUnderstood = notUnderstood,
            Place = place,
            Position = position,
            Quoted = source.Quote(position.Line),
            Arguments = arguments.ToDictionary(argument => argument.Name, argument => argument.Value),
        });
    }

    private Finding More() => new()
    {
        Kind = TextFaults.MoreFaults,
        Grade = Grade.Error,
        NotUnderstood = true,
        Place = "",
        Arguments = new Dictionary<string, object> { ["count"] = untold },
    };
}
