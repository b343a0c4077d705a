namespace Doughwright.App.Desk.Recipes.Telling;

/// <summary>A piece of a sentence.</summary>
internal abstract record Piece
{
    private Piece()
    {
    }

    public abstract string Words { get; }

    /// <summary>Words as they are.</summary>
    internal sealed record Plain(string Text) : Piece
    {
        public override string Words => Text;
    }

    /// <summary>What a person sees when it is done: in italics everywhere.</summary>
    internal sealed record Cue(string Text) : Piece
    {
        public override string Words => Text;
    }

    internal sealed record Figure(Fig Fig) : Piece
    {
        public override string Words => Fig.Text;
    }

    internal sealed record Input(Field Field) : Piece
    {
        public override string Words => Field.Text + Field.Unit;
    }

    /// <summary>A way to another place of the page.</summary>
    internal sealed record Link(string Text, string Address) : Piece
    {
        public override string Words => Text;
    }

    /// <summary>Stands where a figure would, when it is not known.</summary>
    internal sealed record Unknown(string Text) : Piece
    {
        public override string Words => Text;
    }
}
