using Doughwright.Engine.Quantities;

namespace Doughwright.App.Desk.Hosting;

/// <summary>How the desk is opened.</summary>
/// <param name="Port">Where to answer on this machine; null is the usual port, or the next free one after it.</param>
/// <param name="Folder">Where recipes and kitchens lie; null is the user's data folder.</param>
/// <param name="OpensBrowser">Whether the browser is opened on it.</param>
/// <param name="Measures">In which it opens; its pages carry them on.</param>
internal sealed record DeskOptions(int? Port, string? Folder, bool OpensBrowser, MeasureSystem Measures = MeasureSystem.Metric);
