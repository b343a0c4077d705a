using Doughwright.App.Desk.Recipes.Telling;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Doughwright.App.Desk.Recipes.Page;

/// <summary>A sentence on a page. Written as code because every blank between two words counts.</summary>
public sealed class Say : ComponentBase
{
    [Parameter, EditorRequired]
    public Told Told { get; set; } = Told.Nothing;

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        var said = 0;
        foreach (var (at, piece) in Told.Pieces.Index())
        {
            if (piece is Piece.Input { Field: var field })
            {
                var mark = at + 1 < Told.Pieces.Count && Told.Pieces[at + 1] is Piece.Plain(var next) ? LeadingMark(next) : "";
                Input(builder, field, mark);
                said = mark.Length;
            }
            else
            {
                Write(builder, piece, said);
                said = 0;
            }
        }
    }

    /// <summary>The marks that close what stands before them; a line does not begin with one.</summary>
    private static string LeadingMark(string words) => words[..words.TakeWhile(letter => letter is '.' or ',' or ';' or ':' or ')').Count()];

    private static void Input(RenderTreeBuilder builder, Field field, string mark)
    {
        builder.OpenElement(9, "span");
        builder.AddAttribute(10, "class", "closed");
        // The same field stays the same element wherever the sentence moves it, so that a person can go on typing.
        builder.SetKey(field.Option);
        builder.OpenComponent<Slot>(0);
        builder.AddComponentParameter(1, nameof(Slot.Field), field);
        builder.CloseComponent();
        builder.AddContent(11, mark);
        builder.CloseElement();
    }

    /// <param name="said">Letters of it that stand already.</param>
    private static void Write(RenderTreeBuilder builder, Piece piece, int said)
    {
        switch (piece)
        {
            case Piece.Figure { Fig: var figure }:
                Datum.Write(builder, figure);
                break;
            case Piece.Cue { Text: var cue }:
                Element(builder, "i", "cue", cue);
                break;
            case Piece.Was { Text: var was }:
                Element(builder, "span", "was", was);
                break;
            case Piece.Unknown { Text: var unknown }:
                Element(builder, "span", "unknown", unknown);
                break;
            case Piece.Link { Text: var text, Address: var address }:
                builder.OpenElement(2, "a");
                builder.AddAttribute(3, "href", address);
                builder.AddContent(4, text);
                builder.CloseElement();
                break;
            default:
                builder.AddContent(5, piece.Words[said..]);
                break;
        }
    }

    private static void Element(RenderTreeBuilder builder, string name, string @class, string text)
    {
        builder.OpenElement(6, name);
        builder.AddAttribute(7, "class", @class);
        builder.AddContent(8, text);
        builder.CloseElement();
    }
}
