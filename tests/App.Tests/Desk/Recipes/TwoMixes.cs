namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>A dough that is mixed twice: flour and water, a night in the fridge, then the rest of it.</summary>
internal static class TwoMixes
{
    public const string Text = """
        doughwright: 1
        title: Soaked loaf
        make: 1 loaf of 850 g
        home:
          air: 22 C
        parts:
          dough:
            strong white flour: 500 g
            water: 340 g
            salt: 10 g
            instant yeast: 4 g
        steps:
          stir:
            kind: mix
            of: dough
            hands: 3 min
            vessel: steel bowl, 500 g
            order: strong white flour, water
          soak:
            kind: rest
            of: dough
            where: fridge
            cover: covered
            vessel: steel bowl, 500 g
            ends: after 12 h
          mix:
            of: dough
            hands: 8 min
            vessel: steel bowl, 500 g
            order: salt, instant yeast
        """;
}
