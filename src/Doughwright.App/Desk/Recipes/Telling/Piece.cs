namespace Doughwright.App.Desk.Recipes.Telling;

/// <summary>A piece of a sentence.</summary>
public abstract record Piece
{
    private Piece()
    {
    }

    public abstract string Words { get; }

    /// <summary>Words as they are.</summary>
    public sealed record Plain(string Text) : Piece
    {
        public override string Words => Text;
    }

    /// <summary>What a person sees when it is done: in italics everywhere.</summary>
    public sealed record Cue(string Text) : Piece
    {
        public override string Words => Text;
    }

    public sealed record Figure(Fig Fig) : Piece
    {
        public override string Words => Fig.Text;
    }

    public sealed record Input(Field Field) : Piece
    {
        public override string Words => Field.Text + Field.Unit;
    }

    /// <summary>A way to another place of the page.</summary>
    public sealed record Link(string Text, string Address) : Piece
    {
        public override string Words => Text;
    }

    /// <summary>Stands where a figure would, when it is not known.</summary>
    public sealed record Unknown(string Text) : Piece
    {
        public override string Words => Text;
    }

    /// <summary>What a figure before it is at home.</summary>
    public sealed record Was(string Text) : Piece
    {
        public override string Words => Text;
    }
}
