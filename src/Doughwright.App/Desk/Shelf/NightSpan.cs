using Doughwright.Engine.Quantities;

namespace Doughwright.App.Desk.Shelf;

/// <summary>A night, by how long before the bread is ready it falls and ends.</summary>
internal readonly record struct NightSpan(Duration Falls, Duration Ends);
