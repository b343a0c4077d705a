namespace Doughwright.Engine.Heat;

/// <summary>The constituents of food whose thermal properties are published one by one. Carbohydrate here is without fibre.</summary>
internal enum FoodConstituent
{
    Protein,
    Fat,
    Carbohydrate,
    Fibre,
    Ash,
    Water,
}
