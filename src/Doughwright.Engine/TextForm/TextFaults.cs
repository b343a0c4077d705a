namespace Doughwright.Engine.TextForm;

/// <summary>Kinds of findings about the text itself, before anything in it means anything.</summary>
internal static class TextFaults
{
    public const string TextTooLarge = "text-too-large";
    public const string LineTooLong = "line-too-long";
    public const string TooDeep = "too-deep";
    public const string MoreFaults = "more-faults";
    public const string EmptyText = "empty-text";

    public const string Tab = "tab";
    public const string ControlCharacter = "control-character";
    public const string DirectionMark = "direction-mark";
    public const string BrokenCharacter = "broken-character";

    public const string Indentation = "indentation";
    public const string ContinuedLine = "continued-line";
    public const string ColonMissing = "colon-missing";
    public const string SpaceAfterColon = "space-after-colon";
    public const string ColonInWords = "colon-in-words";
    public const string KeyTooLong = "key-too-long";
    public const string ValueMissing = "value-missing";
    public const string ItemInMapping = "item-among-keys";
    public const string KeyInList = "key-among-items";
    public const string ListInList = "list-in-list";
    public const string QuoteOpen = "quote-open";
    public const string AfterQuote = "after-quote";
    public const string Escape = "escape";
    public const string FirstMark = "first-mark";

    public const string Anchor = "anchor";
    public const string Tag = "tag";
    public const string Brackets = "brackets";
    public const string FoldedBlock = "folded-block";
    public const string BlockMark = "block-mark";
    public const string MergeKey = "merge-key";
    public const string SecondDocument = "second-document";
}
