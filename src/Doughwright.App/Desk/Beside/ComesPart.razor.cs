using Doughwright.App.Desk.Layout;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;

namespace Doughwright.App.Desk.Beside;

/// <summary>What the differences come to. Where working out what moved each figure takes long, the figures stand there meanwhile.</summary>
public sealed partial class ComesPart
{
    private SidesView? reasoned;

    /// <summary>Of the same page, asking what moved the figures.</summary>
    [Parameter, EditorRequired]
    public string AskAddress { get; set; } = "";

    [CascadingParameter]
    private SidesDesk Desk { get; set; } = null!;

    /// <summary>What moved the figures; null where that is not asked for.</summary>
    [CascadingParameter]
    private Task<SidesView>? Reasoning { get; set; }

    [Inject]
    private Speaker Speaker { get; set; } = null!;

    private Voice Voice => Speaker.Voice;

    private SidesView View => reasoned ?? Desk.View!;

    private bool IsWaiting => Desk.IsAsked && reasoned is null;

    protected override async Task OnInitializedAsync() => reasoned = Reasoning is null ? null : await Reasoning;
}
