namespace Doughwright.Engine.Baking.Sections;

/// <summary>Vapour in balance with crumb.</summary>
/// <param name="Pascals">Its pressure.</param>
/// <param name="PerKelvin">How that rises with temperature, in Pa/K.</param>
/// <param name="PerWater">How it rises with water, in Pa per kg of water on a kg of dry matter.</param>
internal readonly record struct VapourState(double Pascals, double PerKelvin, double PerWater);
