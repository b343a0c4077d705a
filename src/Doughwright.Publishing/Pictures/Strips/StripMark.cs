using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>The mark of a finding, at what it is about.</summary>
/// <param name="Number">The one it has in the list of findings.</param>
/// <param name="Place">Place of the finding: "steps.bake", "parts.dough.butter"; empty for the recipe as a whole.</param>
internal sealed record StripMark(int Number, MarkShape Shape, string Place);
