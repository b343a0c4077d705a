using Doughwright.App.Desk.Recipes.Telling;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Doughwright.App.Desk.Recipes.Page;

/// <summary>A figure on a page: what stands in the JSON of the command line carries its unrounded value and its place there.</summary>
public sealed class Datum : ComponentBase
{
    [Parameter, EditorRequired]
    public Fig? Figure { get; set; }

    public static void Write(RenderTreeBuilder builder, Fig figure)
    {
        if (figure.Differs || figure.Strong)
        {
            builder.OpenElement(0, figure.Strong || figure.Was is not null ? "strong" : "span");
            builder.AddAttribute(1, "class", figure.Differs ? "moved" : null);
            WriteText(builder, figure);
            builder.CloseElement();
        }
        else
        {
            WriteText(builder, figure);
        }

        if (figure.Was is { } was)
        {
            builder.AddContent(2, " (");
            builder.OpenElement(3, "span");
            builder.AddAttribute(4, "class", "was");
            builder.AddContent(5, was);
            builder.CloseElement();
            builder.AddContent(11, ")");
        }
    }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (Figure is { } figure)
        {
            Write(builder, figure);
        }
    }

    private static void WriteText(RenderTreeBuilder builder, Fig figure)
    {
        if (figure.Of is not { } of)
        {
            builder.AddContent(6, figure.Text);
            return;
        }

        builder.OpenElement(7, "data");
        builder.AddAttribute(8, "value", figure.Exact);
        builder.AddAttribute(9, "data-of", of);
        builder.AddContent(10, figure.Text);
        builder.CloseElement();
    }
}
