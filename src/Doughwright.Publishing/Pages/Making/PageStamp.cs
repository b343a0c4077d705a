namespace Doughwright.Publishing.Pages.Making;

/// <summary>What a page was made from, so that it can be made again.</summary>
/// <param name="State">Hash of the recipe's canonical text.</param>
/// <param name="Engine">Version of the engine.</param>
/// <param name="Larder">Version of the larder.</param>
internal sealed record PageStamp(string State, string Engine, string Larder);
