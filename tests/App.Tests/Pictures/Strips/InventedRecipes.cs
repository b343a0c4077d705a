namespace Doughwright.App.Tests.Pictures.Strips;

/// <summary>Recipes of every build there can be, beside those of the house.</summary>
internal static class InventedRecipes
{
    private const string Head = """
        doughwright: 1
        title: Made up
        make: 2 rings of 500 g
        home:
          name: Somewhere
          air: 21 C
        """;

    /// <summary>No part beside the dough, and nothing rises: no bulk.</summary>
    public const string NoBulk = Head + """

        parts:
          dough:
            strong white flour: 500 g
            water: 320 g
            salt: 9 g
        steps:
          mix:
            of: dough
            hands: 8 min
            measured: 24 C
          bake:
            of: dough
            oven: 230 C fan
            measured: 18 min
        """;

    /// <summary>A dough for the fridge: nothing is baked.</summary>
    public const string NoBake = Head + """

        parts:
          dough:
            strong white flour: 500 g
            water: 320 g
            instant yeast: 3 g
        steps:
          mix:
            of: dough
            hands: 8 min
            vessel: steel bowl, 500 g
            measured: 24 C
          bulk:
            of: dough
            ends: doubled
            measured: 120 min
        """;

    /// <summary>Mixed twice, with a rest between.</summary>
    public const string TwoMixes = Head + """

        parts:
          dough:
            strong white flour: 500 g
            water: 320 g
            salt: 9 g
            instant yeast: 3 g
        steps:
          mix:
            of: dough
            hands: 5 min
            vessel: steel bowl, 500 g
            measured: 24 C
          rest:
            of: dough
            ends: after 40 min
          knead:
            kind: mix
            of: dough
            hands: 8 min
            measured: 25 C
          bulk:
            of: dough
            ends: doubled
            measured: 120 min
          bake:
            of: dough
            oven: 230 C fan
            measured: 30 min
        """;

    /// <summary>Four parts that wind in, one of them into another, a filling, a wash and a glaze.</summary>
    public const string Everything = Head + """

        parts:
          poolish:
            kind: preferment
            strong white flour: 100 g
            water: 100 g
            instant yeast: 0.2 g
          scald:
            strong white flour: 40 g
            water: 80 g, boiling
          potato:
            kind: puree
            potato: 150 g, boiled, peeled, mashed
          soaker:
            rolled oats: 60 g
            water: 90 g
          dough:
            strong white flour: 400 g
            poolish: all of it
            scald: all of it
            potato: all of it
            soaker: all of it
            butter: 40 g, soft
            salt: 10 g
            instant yeast: 3 g
          plums:
            kind: filling
            name: Plum filling
            plums: 220 g
          wash:
            milk: 12 g
          glaze:
            kind: icing
            icing sugar: 80 g
            water: 12 g
        steps:
          stir:
            kind: mix
            of: poolish
            hands: 3 min
          ripen:
            kind: rest
            of: poolish
            ends: after 14 h
          soak:
            kind: rest
            of: soaker
            hands: 2 min
            ends: after 60 min
          boil:
            kind: cook
            of: potato
            where: hob
            ends: after 20 min
          cool potato:
            kind: cool
            of: potato
            hands: 5 min
            vessel: steel tray, 300 g
            depth: 1 cm
            ends: at 28 C
            measured: 80 min
          scald:
            of: scald
            hands: 3 min
            vessel: steel bowl, 150 g
            ends: at 28 C
            measured: 70 min
          mix:
            of: dough
            hands: 12 min
            vessel: steel bowl, 500 g
            measured: 26 C
          bulk:
            of: dough
            ends: doubled
            measured: 100 min
            fold: at 30 min, 2 min by hand
          stew:
            kind: cook
            of: plums
            where: hob
            hands: 5 min
            ends: after 12 min
          cool plums:
            kind: cool
            of: plums
            ends: after 40 min
          fill:
            kind: shape
            of: dough
            hands: 25 min
          proof:
            of: dough
            measured: 60 min
            cue: domed, springs back slowly
          brush:
            kind: glaze
            of: wash
            hands: 2 min
          bake:
            of: dough
            oven: 180 C fan
            measured: 33 min
          cool:
            of: dough
            ends: after 40 min
          stir glaze:
            kind: mix
            of: glaze
            hands: 4 min
          pour:
            kind: finish
            of: glaze
            hands: 5 min
        """;

    /// <summary>Nothing but flour and a step that says nothing.</summary>
    public const string AlmostNothing = Head + """

        parts:
          dough:
            strong white flour: 500 g
        steps:
          mix:
            of: dough
        """;

    public static TheoryData<string> All => [NoBulk, NoBake, TwoMixes, Everything, AlmostNothing];
}
