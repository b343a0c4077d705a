namespace Doughwright.Engine.TextForm;

/// <summary>Kinds of findings about what a text means.</summary>
internal static class FormFaults
{
    public const string FormMissing = "form-missing";
    public const string FormNotFirst = "form-not-first";
    public const string FormNewer = "form-newer";

    public const string UnknownKey = "unknown-key";
    public const string SameKeyTwice = "same-key-twice";
    public const string SameIdTwice = "same-id-twice";
    public const string IdMissing = "id-missing";
    public const string WordsWanted = "words-wanted";
    public const string OneLineWanted = "one-line-wanted";
    public const string KeysWanted = "keys-wanted";
    public const string UnknownWord = "unknown-word";

    public const string TitleMissing = "title-missing";
    public const string HomeMissing = "home-missing";
    public const string AirMissing = "air-missing";
    public const string PartsMissing = "parts-missing";
    public const string PartWithoutLines = "part-without-lines";
    public const string KitchenNameMissing = "kitchen-name-missing";
    public const string MakeNotUnderstood = "make-not-understood";
    public const string AirNotUnderstood = "air-not-understood";

    public const string KindMissing = "kind-missing";
    public const string UnknownKind = "unknown-kind";
    public const string MissingComponent = "missing-component";
    public const string Circle = "circle";
    public const string UnknownRole = "unknown-role";
    public const string WarmthTwice = "warmth-twice";
    public const string NumberInWords = "number-in-words";
    public const string NearlyKnownWord = "nearly-known-word";
    public const string WeighedNotUnderstood = "weighed-not-understood";

    public const string StepWithoutPart = "step-without-part";
    public const string StepOfUnknownPart = "step-of-unknown-part";
    public const string OrderUnknownLine = "order-unknown-line";
    public const string OrderLeavesOut = "order-leaves-out";
    public const string OrderTwice = "order-twice";
    public const string EndNotUnderstood = "end-not-understood";
    public const string MeasuredNotUnderstood = "measured-not-understood";
    public const string FoldNotUnderstood = "fold-not-understood";
    public const string VesselNotUnderstood = "vessel-not-understood";
    public const string VesselNameTaken = "vessel-name-taken";
    public const string SizeNotUnderstood = "size-not-understood";
    public const string OvenRunsNotUnderstood = "oven-runs-not-understood";
    public const string HearthNotUnderstood = "hearth-not-understood";
    public const string DialNotUnderstood = "dial-not-understood";
    public const string LidNotUnderstood = "lid-not-understood";
    public const string LearnMany = "learn-many";

    public const string BaseUnknownLine = "base-unknown-line";
    public const string PercentWithoutBase = "percent-without-base";
    public const string SwapNotUnderstood = "swap-not-understood";
    public const string SwapOfUnknownPart = "swap-of-unknown-part";
    public const string PhotoNotUnderstood = "photo-not-understood";
    public const string KeepingNotUnderstood = "keeping-not-understood";

    public const string MeasureNotLevel = "measure-not-level";
    public const string MeasureOfUnknown = "measure-of-unknown";
    public const string MeasureNotClear = "measure-not-clear";
    public const string MeasureNotHeld = "measure-not-held";
    public const string NoMeasureHeld = "no-measure-held";
    public const string MeasureOfPart = "measure-of-part";

    public const string OwnRoleMissing = "own-role-missing";
    public const string OwnCarbohydrateTwice = "own-carbohydrate-twice";
    public const string OwnWaterTwice = "own-water-twice";
    public const string WeighingsNotUnderstood = "weighings-not-understood";
    public const string DriedGained = "dried-gained";
    public const string MadeHalfSaid = "made-half-said";
    public const string MadeFromUnknown = "made-from-unknown";
    public const string MadeCannotBe = "made-cannot-be";
    public const string MadeAndLabel = "made-and-label";
    public const string IngredientNameMissing = "ingredient-name-missing";
    public const string UnknownAllergen = "unknown-allergen";
    public const string LabelSaysNothing = "label-says-nothing";
    public const string LabelBelowZero = "label-below-zero";
    public const string LabelAboveHundred = "label-above-hundred";
    public const string LabelPartAboveWhole = "label-part-above-whole";
    public const string LabelSumAboveHundred = "label-sum-above-hundred";
    public const string LabelSaltAndSodium = "label-salt-and-sodium";

    public const string LargeDough = "large-dough";
    public const string CommentsDropped = "comments-dropped";
}
