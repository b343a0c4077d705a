using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Strips.Labels;

/// <summary>A line of a cue under the bench.</summary>
/// <param name="X">Where it is held: smaller type draws it together towards this, and so to its comb.</param>
/// <param name="Line">The first is 1.</param>
internal sealed record CueLine(double X, Anchor Anchor, int Line, string Text);
