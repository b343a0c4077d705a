namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>Where a name was written.</summary>
/// <param name="Line">The line on which it stands.</param>
internal readonly record struct WrittenName(double Left, double Right, double Line);
