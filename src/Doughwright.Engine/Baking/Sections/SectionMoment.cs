namespace Doughwright.Engine.Baking.Sections;

/// <summary>A piece at one moment of its bake. Temperatures in °C, of the surfaces at the middle of each face.</summary>
/// <param name="Core">In the middle of axis and height.</param>
/// <param name="Water">Mean, in kg per kg of dry matter.</param>
/// <param name="Loss">Share of the dough's mass that is gone.</param>
internal readonly record struct SectionMoment(double Seconds, double Core, double Side, double Top, double Bottom, double Water, double Loss);
