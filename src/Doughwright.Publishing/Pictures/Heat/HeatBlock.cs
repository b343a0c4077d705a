using Doughwright.Engine.Rehearsals.Courses;

namespace Doughwright.Publishing.Pictures.Heat;

/// <summary>A share as a rectangle on the line of the mixed temperature.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Width">In units of the picture: its heat capacity.</param>
/// <param name="Kelvins">Its height: up when it gives, down when it takes.</param>
internal sealed record HeatBlock(HeatShare Share, string Name, string Value, double X, double Width, double Kelvins)
{
    /// <summary>Work and air have no heat capacity: their rectangle has the right area and an agreed height.</summary>
    public bool IsAgreed => Share.KilojoulesPerKelvin is null || Share.GoesIn is null;

    public bool IsAbove => Kelvins > 0;

    public double Right => X + Width;
}
