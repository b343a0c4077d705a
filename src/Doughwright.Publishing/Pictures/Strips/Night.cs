using Doughwright.Engine.Quantities;

namespace Doughwright.Publishing.Pictures.Strips;

/// <summary>A night, by how long before the bread is ready it falls and ends: <paramref name="Falls"/> is the longer.</summary>
internal readonly record struct Night(Duration Falls, Duration Ends);
