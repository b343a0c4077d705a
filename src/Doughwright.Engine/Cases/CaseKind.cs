namespace Doughwright.Engine.Cases;

/// <summary>A kind of case: the conditions it needs, what can be measured, and the models it is held against.</summary>
internal abstract class CaseKind
{
    /// <summary>As the text says it.</summary>
    public abstract string Name { get; }

    /// <summary>Keys under "conditions".</summary>
    public abstract IReadOnlyList<string> Keys { get; }

    /// <summary>Keys under "measured".</summary>
    public abstract IReadOnlyList<CaseQuantity> Quantities { get; }

    /// <summary>Reads the conditions. Null when something is missing or wrong, which has been told then.</summary>
    public abstract ICaseModel? Read(CaseConditions conditions);
}
