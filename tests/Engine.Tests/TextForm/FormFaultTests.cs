using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Tests.TextForm;

/// <summary>One slip in the potato rolls gives one finding, at its place, and no second one in its wake.</summary>
public class FormFaultTests
{
    [Theory]
    [InlineData("doughwright: 1\n", "", "form-missing", true)]
    [InlineData("doughwright: 1\ntitle: Potato rolls\n", "title: Potato rolls\ndoughwright: 1\n", "form-not-first", true)]
    [InlineData("doughwright: 1\n", "doughwright: 2\n", "form-newer", true)]
    [InlineData("doughwright: 1\n", "doughwright: one\n", "unknown-word", true)]
    [InlineData("title: Potato rolls\n", "", "title-missing", false)]
    [InlineData("make: 10 rolls of 80 g", "make: a lot", "make-not-understood", true)]
    [InlineData("make: 10 rolls of 80 g", "make: 10 rolls of 4 g", "piece-outside-limits", false)]
    [InlineData("make: 10 rolls of 80 g", "make: 0 rolls of 80 g", "pieces-outside-limits", false)]
    [InlineData("  air: 21 C\n", "", "air-missing", false)]
    [InlineData("  air: 21 C", "  air: 46 C", "air-outside-limits", false)]
    [InlineData("  air: 21 C", "  air: 17 C, 21 C after 0 h", "air-not-understood", true)]
    [InlineData("  altitude: 5 m", "  altitude: 5,001 m", "altitude-outside-limits", false)]
    [InlineData("  altitude: 5 m", "  altitude: -431 m", "altitude-outside-limits", false)]
    [InlineData("  fridge: 5 C", "  fridge: 13 C", "fridge-outside-limits", false)]
    [InlineData("  fridge: 5 C", "  fridge: -2.1 C", "fridge-outside-limits", false)]
    [InlineData("  tap: 12 C", "  tap: 12", "unit-missing", true)]
    [InlineData("  tap: 12 C", "  tap: 12 g", "unit-of-another-kind", true)]
    [InlineData("  oven: fan\n", "  oven: hot\n", "unknown-word", true)]
    [InlineData("  oven: fan\n", "  oven:\n", "value-missing", true)]
    [InlineData("  oven: fan\n", "  oven: fan: 2\n", "colon-in-words", true)]
    [InlineData("  oven: fan\n", "  oven : fan\n  \"oven\": fan\n", "same-key-twice", true)]
    [InlineData("  oven: fan\n", "  oven:fan\n", "space-after-colon", true)]
    [InlineData("  oven: fan\n", "   oven: fan\n", "indentation", true)]
    [InlineData("  oven: fan\n", " oven: fan\n", "indentation", true)]
    [InlineData("  oven: fan\n", "  oven: |\n    fan\n", "one-line-wanted", true)]
    [InlineData("  oven: fan\n", "  oven:\n    - fan\n", "words-wanted", true)]
    [InlineData("  oven: fan\n", "  oven: >\n    fan\n", "folded-block", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nwords: |\n      \n  Soft.\n", "indentation", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nwords: |\n    Soft.\n  Fresh.\n", "indentation", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nwords: |\n", "value-missing", true)]
    [InlineData("  oven: fan\n", "  oven: !big fan\n", "tag", true)]
    [InlineData("    milk: 15 g\n", "    oil *x: 5 g\n", "anchor", true)]
    [InlineData("  oven: fan\n", "  oven: {fan}\n", "brackets", true)]
    [InlineData("  oven: fan\n", "  oven: @fan\n", "first-mark", true)]
    [InlineData("  oven: fan\n", "  oven: \"fan\n", "quote-open", true)]
    [InlineData("  oven: fan\n", "  oven: \"fan\" x\n", "after-quote", true)]
    [InlineData("  oven: fan\n", "  oven: \"f\\n\"\n", "escape", true)]
    [InlineData("  oven: fan\n", "  <<: fan\n  oven: fan\n", "merge-key", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  and hot\n", "colon-missing", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n    and hot\n    and large\n", "continued-line", true)]
    [InlineData("tools:\n", "---\ntools:\n", "second-document", true)]
    [InlineData("  - thermometer\n", "  - - thermometer\n", "list-in-list", true)]
    [InlineData("  - thermometer\n", "  thermometer: 1\n", "key-among-items", true)]
    [InlineData("  - thermometer\n", "  - |\n    thermometer\n", "block-mark", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g\n    - sugar\n", "item-among-keys", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7\n", "unit-missing", true)]
    [InlineData("    salt: 7 g\n", "    salt: a pinch\n", "number-missing", true)]
    [InlineData("    salt: 7 g\n", "    salt: 0 %\n", "share-outside-limits", true)]
    [InlineData("    salt: 7 g\n", "    salt: two %\n", "number-missing", true)]
    [InlineData("    milk: 15 g\n", "    milk: 15 %\n", "percent-without-base", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, 20 C\n", "number-in-words", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, counts as liqid\n", "unknown-role", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, boilin\n", "nearly-known-word", false)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, boiling, from the tap\n", "warmth-twice", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, weighed twice\n", "weighed-not-understood", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, at 200 C\n", "line-outside-limits", false)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g\n    Salt: 8 g\n", "same-id-twice", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g\n    \"?\": 8 g\n", "id-missing", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g\n    malt: 8 g\n", "order-leaves-out", false)]
    [InlineData("    kind: puree\n", "    kind: mush\n", "unknown-kind", true)]
    [InlineData("    kind: puree\n", "", "kind-missing", true)]
    [InlineData("    milk: 15 g\n", "    kind: wash\n", "part-without-lines", false)]
    [InlineData("    of: wash\n", "    of: washing\n", "step-of-unknown-part", false)]
    [InlineData("    of: wash\n", "", "step-without-part", true)]
    [InlineData("    order: scald, potato, egg,", "    order: scald, potato, egg, egg,", "order-twice", false)]
    [InlineData("    order: scald, potato, egg,", "    order: scald, potato, egg, oil,", "order-unknown-line", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: when ready\n", "end-not-understood", true)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 21 times its volume\n", "growth-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: after 15 d\n", "step-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 0.5 times its volume\n", "growth-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 1 times its volume\n", "growth-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: after 0 min\n", "step-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: by its cue, about 20 s\n", "step-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 200 C\n", "temperature-outside-limits", false)]
    [InlineData("    ends: at 2 times its volume\n", "    ends: core at 45 C\n", "core-outside-limits", false)]
    [InlineData("    measured: 105 min on 9 November\n", "    measured: 0 min\n", "step-outside-limits", false)]
    [InlineData("    measured: 19 min on 9 November\n", "    measured: 19 min and 210 C\n", "core-outside-limits", false)]
    [InlineData("    measured: 26 C on 9 November\n", "    measured: 78 C\n", "mixed-outside-limits", false)]
    [InlineData("    hands: 8 min\n", "    hands: 15 d\n", "hands-outside-limits", false)]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, at 100.1 C\n", "line-outside-limits", false)]
    [InlineData("    measured: 26 C on 9 November\n", "    measured: 26 C and 28 C\n", "unit-of-another-kind", true)]
    [InlineData("    measured: 26 C on 9 November\n", "    measured: 2 min and 3 min\n", "measured-not-understood", true)]
    [InlineData("    fold: at 45 min, 2 min by hand\n", "    fold: once\n", "fold-not-understood", true)]
    [InlineData("    vessel: steel bowl, 150 g\n", "    vessel: my bowl, 150 g\n", "vessel-not-understood", true)]
    [InlineData("    vessel: steel bowl, 150 g\n", "    vessel: steel bowl, 150\n", "unit-missing", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 70 C fan\n", "oven-outside-limits", false)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan, 150 C\n", "dial-not-understood", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan, 160 C after 5 min, 150 C after 10 min\n", "dial-not-understood", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan, 50 C after 5 min\n", "oven-outside-limits", false)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan, 150 C after 0 min\n", "within-bake-outside-limits", false)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan\n    steam: 13 h\n", "within-bake-outside-limits", false)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan\n    steam: much\n", "number-missing", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan\n    on: brick\n", "unknown-word", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan\n    lid: 20 min\n", "lid-not-understood", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C fan\n    lid: off after 20 s\n", "within-bake-outside-limits", false)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven runs: -10 C\n", "oven-runs-not-understood", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven runs: -10 C hotter\n", "oven-runs-not-understood", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven runs: hotter\n", "oven-runs-not-understood", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven runs: 61 C hotter\n", "oven-runs-outside-limits", false)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven runs: 10 hotter\n", "unit-missing", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven heats in: 1 min\n", "oven-heats-outside-limits", false)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven recovers in: 31 min\n", "oven-recovers-outside-limits", false)]
    [InlineData("  oven: fan\n", "  oven: fan\n  oven steam: much\n", "unknown-word", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  hearth: brick\n", "hearth-not-understood", true)]
    [InlineData("  oven: fan\n", "  oven: fan\n  hearth: stone, 1 m\n", "hearth-outside-limits", false)]
    [InlineData("  oven: fan\n", "  oven: fan\n  hearth: stone, thick\n", "number-missing", true)]
    [InlineData("    oven: 170 C fan\n", "    oven: 331 C\n", "oven-outside-limits", false)]
    [InlineData("    oven: 170 C fan\n", "    oven: 170 C hot\n", "more-than-a-quantity", true)]
    [InlineData("    way: by hand\n", "    way: by foot\n", "unknown-word", true)]
    [InlineData("    depth: 1 cm\n", "    depth: 31 cm\n", "depth-outside-limits", false)]
    [InlineData("    depth: 1 cm\n", "    depth: 0 cm\n", "depth-outside-limits", false)]
    [InlineData("    milk: 15 g\n", "    base: mlik\n    milk: 15 g\n", "base-unknown-line", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nswaps: butter by\n", "swap-not-understood", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nswaps:\n  - butter by oil, tried\n", "swap-not-understood", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nswaps:\n  - butter by oil, in dogh\n", "swap-of-unknown-part", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nkeeping:\n  - in a bag, 2 months\n", "unit-unknown", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nkeeping:\n  - in a bag, 3 min\n", "keeping-outside-limits", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nphoto: crust.jpg, the crust\n", "photo-not-understood", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nphoto: 1f9c03ab77e2d4c1\n", "photo-not-understood", true)]
    [InlineData("    way: by hand\n", "    way: by hand\n    photo:\n      - 1F9C03AB77E2D4C1, the crumb\n", "photo-not-understood", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nkeeping: 2 d\n", "keeping-not-understood", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nwithout:\n  brush: A spoon.\n  Brush: A leaf.\n", "same-id-twice", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nwithout: a brush\n", "keys-wanted", true)]
    [InlineData("    way: by hand\n", "    way: by hand\n    variants:\n      machine:\n        way: by foot\n", "unknown-word", true)]
    [InlineData("    way: by hand\n", "    way: by hand\n    variants:\n      machine:\n        of: wash\n", "unknown-key", true)]
    [InlineData("    way: by hand\n", "    way: by hand\n    variants:\n      a b:\n        hands: 2 min\n      a-b:\n        hands: 3 min\n", "same-id-twice", true)]
    [InlineData("    way: by hand\n", "    way: by hand\n    variants:\n      machine:\n        measured: 78 C\n", "mixed-outside-limits", false)]
    [InlineData("    measured: 105 min on 9 November\n", "    measured: 105 min on 9 November, in a room of 50 C\n", "air-outside-limits", false)]
    [InlineData("    measured: 105 min on 9 November\n", "    measured: 105 min on 9 November, in a room of 22\n", "unit-missing", true)]
    [InlineData("    salt: 7 g\n", "    salt: 1 heaped tsp\n", "measure-not-level", false)]
    [InlineData("    milk: 15 g\n", "    milk: 15 g\n    sal mirabile: 1 tsp\n", "measure-of-unknown", false)]
    [InlineData("    sugar: 30 g\n", "    sugar: 1 cup\n", "measure-not-clear", false)]
    [InlineData("    sugar: 30 g\n", "    sugar: 1 sachet\n", "measure-not-held", false)]
    [InlineData("    milk: 15 g\n", "    my drink: 1 tbsp\nown:\n  my drink:\n    counts as: liquid\n    fat: 1 g\n", "no-measure-held", false)]
    [InlineData("    scald: all of it\n", "    scald: 2 tbsp\n", "measure-of-part", true)]
    [InlineData("    salt: 7 g\n", "    salt: 7 gulps\n", "unit-unknown", true)]
    [InlineData("    sugar: 30 g\n", "    sugar: 1/2 lb\n", "fraction", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    fat: 1 g\n", "own-role-missing", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: drink\n    fat: 1 g\n", "unknown-role", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    carbohydrate: 5 g\n    total carbohydrate: 6 g\n", "own-carbohydrate-twice", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    fat: 1 g\n    allergens: oat glutten\n", "unknown-allergen", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n", "label-says-nothing", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    fat: 101 g\n", "label-above-hundred", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    carbohydrate: 5 g\n    of which sugars: 7 g\n", "label-part-above-whole", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    carbohydrate: 60 g\n    fat: 50 g\n", "label-sum-above-hundred", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    salt: 1 g\n    sodium: 100 mg\n", "label-salt-and-sodium", false)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    fat: 1\n", "unit-missing", true)]
    [InlineData("title: Potato rolls\n", "title: Potato rolls\nown:\n  my drink:\n    counts as: liquid\n    fat: 1 g\n    sugar: 2 g\n", "unknown-key", true)]
    public void Slip_GivesOneFinding(string piece, string instead, string kind, bool notUnderstood)
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith(piece, instead));
        var finding = Assert.Single(reading.Findings);
        Assert.Equal((kind, notUnderstood), (finding.Kind, finding.NotUnderstood));
        Assert.Equal(kind != "form-newer", reading.Recipe is not null);
        Assert.Equal(!notUnderstood, reading.Understood);
        Assert.NotNull(finding.Quoted);
    }

    /// <summary>The ends of a range belong to it.</summary>
    [Theory]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 1.05 times its volume\n")]
    [InlineData("    ends: at 2 times its volume\n", "    ends: at 20 times its volume\n")]
    [InlineData("    ends: at 2 times its volume\n", "    ends: after 30 s\n")]
    [InlineData("    ends: at 2 times its volume\n", "    ends: by its cue, about 0.5 min\n")]
    [InlineData("    measured: 105 min on 9 November\n", "    measured: 0.5 min\n")]
    [InlineData("    measured: 19 min on 9 November\n", "    measured: 19 min and 50 C\n")]
    [InlineData("    measured: 19 min on 9 November\n", "    measured: 19 min and 120 C\n    ends: core at 120 C\n")]
    [InlineData("    measured: 26 C on 9 November\n", "    measured: 60 C\n")]
    [InlineData("    measured: 26 C on 9 November\n", "    measured: 0 C\n")]
    [InlineData("    hands: 8 min\n", "    hands: 0 min\n")]
    [InlineData("    fold: at 45 min, 2 min by hand\n", "    fold: at 45 min, 0 min by hand\n")]
    [InlineData("    salt: 7 g\n", "    salt: 7 g, at 212 F\n")]
    [InlineData("    depth: 1 cm\n", "    depth: 1 mm\n")]
    [InlineData("    depth: 1 cm\n", "    depth: 30 cm\n")]
    public void AtTheLimit_IsSound(string piece, string instead) =>
        Assert.Empty(RecipeText.Read(Texts.PotatoRollsWith(piece, instead)).Findings);

    [Theory]
    [InlineData("poolish", "preferment")]
    [InlineData("soker", "soaker")]
    [InlineData("crumbs", "")]
    public void UnknownKind_OffersWhatWasMeant(string written, string offered)
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith("kind: puree", "kind: " + written));
        Assert.Equal(offered, Assert.Single(reading.Findings).Arguments["nearest"]);
    }

    [Theory]
    [InlineData("cover: cloth", "cover: tea towel", "cloth")]
    [InlineData("cover: cloth", "cover: clothe", "cloth")]
    [InlineData("cover: cloth", "cover: moon", "")]
    [InlineData("way: by hand", "way: kneading by hand", "by hand")]
    public void UnknownWord_OffersWhatWasMeant_AndNothingFar(string piece, string instead, string offered) =>
        Assert.Equal(offered, Assert.Single(RecipeText.Read(Texts.PotatoRollsWith(piece, instead)).Findings).Arguments["nearest"]);

    [Fact]
    public void BrushWithoutAKind_OffersGlaze() =>
        Assert.Equal("glaze", RecipeText.Read(Texts.PotatoRollsWith("    kind: glaze\n", "")).Findings.Single().Arguments["nearest"]);

    [Theory]
    [InlineData("320 g", "1 g", null)]
    [InlineData("320 g", "600 kg", "dough-outside-limits")]
    [InlineData("320 g", "20 kg", "large-dough")]
    [InlineData("320 g", "19 kg", null)]
    public void Dough_HasLimitsOverAllItsParts(string flour, string instead, string? kind)
    {
        var reading = RecipeText.Read(Texts.PotatoRollsWith("strong white flour: " + flour, "strong white flour: " + instead));
        Assert.Equal(kind, reading.Findings.SingleOrDefault()?.Kind);
    }

    [Fact]
    public void SmallDough_IsBelowTheLimit()
    {
        var finding = Assert.Single(RecipeText.Read(Small("19 g")).Findings);
        Assert.Equal(("dough-outside-limits", Grade.Error, "parts.dough"), (finding.Kind, finding.Grade, finding.Place));
        Assert.Empty(RecipeText.Read(Small("20 g")).Findings);
    }

    [Fact]
    public void PartsInsideThemselves_AreToldWithTheWholeRound()
    {
        var text = Small("100 g\n    soaker: all of it\n  soaker:\n    seeds: 10 g\n    syrup: all of it\n  syrup:\n    soaker: 5 g");
        var finding = Assert.Single(RecipeText.Read(text).Findings);
        Assert.Equal("soaker, syrup, soaker", finding.Arguments["circle"]);
        Assert.False(finding.NotUnderstood);
    }

    [Fact]
    public void FaultsOfLaterLines_AreNotHiddenByEarlierOnes()
    {
        var text = Texts.PotatoRolls.Replace("\n", "\t\n");
        var reading = RecipeText.Read(text);
        Assert.Equal(Enumerable.Range(1, text.Count(c => c == '\n')), reading.Findings.Select(finding => finding.Position.Line));
        Assert.Equal(Texts.PotatoRolls, RecipeText.Write(reading.Recipe!));
    }

    [Fact]
    public void Kitchen_WithoutAir_IsNone()
    {
        var reading = KitchenText.Read("doughwright: 1\nkitchen: Shed\nfrige: 5 C\n");
        Assert.Null(reading.Kitchen);
        Assert.Equal(["air-missing", "unknown-key"], reading.Findings.Select(finding => finding.Kind));
    }

    [Fact]
    public void Air_CanChangeOverTheDay()
    {
        var air = KitchenText.Read("doughwright: 1\nkitchen: Shed\nair: 17 C, 21 C after 9 h\n").Kitchen!.Air;
        Assert.Equal(17, air.At(Engine.Quantities.Duration.FromHours(8.9)).Celsius);
        Assert.Equal(21, air.At(Engine.Quantities.Duration.FromHours(9)).Celsius);
    }

    /// <summary>The spoiled texts of the slips above.</summary>
    internal static IEnumerable<string> Slips() => typeof(FormFaultTests).GetMethod(nameof(Slip_GivesOneFinding))!
        .GetCustomAttributes(typeof(InlineDataAttribute), false)
        .Cast<InlineDataAttribute>()
        .Select(slip => Texts.PotatoRollsWith((string)slip.Data[0]!, (string)slip.Data[1]!));

    private static string Small(string flour) =>
        $"doughwright: 1\ntitle: Small\nhome:\n  air: 21 C\nparts:\n  dough:\n    flour: {flour}\n";
}
