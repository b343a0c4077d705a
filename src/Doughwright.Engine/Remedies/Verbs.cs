namespace Doughwright.Engine.Remedies;

/// <summary>What remedies do. The words of each are in the resources, under "remedy." and the verb.</summary>
internal static class Verbs
{
    public const string AddTool = "add-tool";
    public const string DropTool = "drop-tool";
    public const string WriteDial = "write-dial";
    public const string WriteDialAlone = "write-dial-alone";
    public const string WriteCore = "write-core";
    public const string WriteTrays = "write-trays";
    public const string MoveStepAbove = "move-step-above";
    public const string MovePartAbove = "move-part-above";
    public const string AddShape = "add-shape";
    public const string AddCooling = "add-cooling";
    public const string WriteHands = "write-hands";
    public const string DropFold = "drop-fold";
    public const string AppendToOrder = "append-to-order";
    public const string WarmBowl = "warm-bowl";
    public const string PutInFridge = "put-in-fridge";
    public const string TakeOffHob = "take-off-hob";
    public const string WriteStepKind = "write-step-kind";
    public const string WritePartKind = "write-part-kind";
    public const string WriteBothKinds = "write-both-kinds";
    public const string EndByCue = "end-by-cue";
    public const string UseAll = "use-all";
    public const string DropPart = "drop-part";
    public const string MakeMore = "make-more";
    public const string TakeOutOf = "take-out-of";
    public const string AddStepBefore = "add-step-before";
    public const string AddStepAtEnd = "add-step-at-end";
    public const string WritePiece = "write-piece";
    public const string WritePieces = "write-pieces";
    public const string WriteName = "write-name";
    public const string WriteWarmth = "write-warmth";
    public const string WriteBoiling = "write-boiling";
    public const string AddLine = "add-line";
    public const string WriteMass = "write-mass";
    public const string AddWater = "add-water";
    public const string DropEntry = "drop-entry";
    public const string LeaveWaterOut = "leave-water-out";

    // Changes of the text.
    public const string WriteInstead = "write-instead";
    public const string AddKind = "add-kind";
    public const string DeleteMark = "delete-mark";
    public const string Indent = "indent";
    public const string PutSpaces = "put-spaces";
    public const string PutQuotes = "put-quotes";
    public const string CloseQuote = "close-quote";
    public const string PutComma = "put-comma";
    public const string TakeOutWords = "take-out-words";
    public const string DeleteLine = "delete-line";
    public const string WriteRegion = "write-region";
    public const string WriteFormFirst = "write-form-first";
}
