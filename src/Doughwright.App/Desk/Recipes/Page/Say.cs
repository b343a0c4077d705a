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
        foreach (var piece in Told.Pieces)
        {
            Write(builder, piece);
        }
    }

    private static void Write(RenderTreeBuilder builder, Piece piece)
    {
        switch (piece)
        {
            case Piece.Figure { Fig: var figure }:
                Datum.Write(builder, figure);
                break;
            case Piece.Input { Field: var field }:
                builder.OpenComponent<Slot>(0);
                builder.AddComponentParameter(1, nameof(Slot.Field), field);
                // The same field stays the same element wherever the sentence moves it, so that a person can go on typing.
                builder.SetKey(field.Option);
                builder.CloseComponent();
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
                builder.AddContent(5, piece.Words);
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
