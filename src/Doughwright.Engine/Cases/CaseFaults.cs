namespace Doughwright.Engine.Cases;

/// <summary>Kinds of findings about the text of a case, and about cases that cannot be run.</summary>
internal static class CaseFaults
{
    public const string KeyMissing = "case-key-missing";
    public const string IdWrong = "case-id-wrong";
    public const string NothingMeasured = "case-nothing-measured";
    public const string FigureOutside = "case-figure-outside";
    public const string RowWrong = "case-row-wrong";
    public const string RowsMissing = "case-rows-missing";
    public const string RowsTwice = "case-rows-twice";
    public const string RowsTooMany = "case-rows-too-many";
    public const string RangeBackwards = "case-range-backwards";
    public const string ToleranceMissing = "case-tolerance-missing";
    public const string ToleranceNought = "case-tolerance-nought";
    public const string ReasonMissing = "case-reason-missing";
    public const string TableMissing = "case-table-missing";
    public const string TableName = "case-table-name";
    public const string TableHead = "case-table-head";
    public const string TableRow = "case-table-row";
    public const string OneOfMissing = "case-one-of-missing";
    public const string NotTogether = "case-not-together";
    public const string IngredientUnknown = "case-ingredient-unknown";

    public const string StoneNotSaid = "case-stone-not-said";
    public const string NoDough = "case-no-dough";
    public const string SmallerThanDough = "case-smaller-than-dough";

    public const string NoModel = "case-no-model";
    public const string NotComputed = "case-not-computed";
    public const string BeyondModel = "case-beyond-model";
}
