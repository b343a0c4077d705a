namespace Doughwright.Engine.TextForm;

/// <summary>Kinds of findings about what an author has accepted.</summary>
internal static class AcceptedFaults
{
    public const string WithoutReason = "accepted-without-reason";
}
