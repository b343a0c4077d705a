namespace Doughwright.Engine.Ingredients;

/// <summary>What is done between buying and weighing in.</summary>
public enum PreparationStep
{
    Peel,

    /// <summary>Stones, stems, cores, pods taken off.</summary>
    Trim,

    Cook,
}

/// <summary>What peeling, trimming or cooking leaves of an ingredient.</summary>
/// <param name="Id">The row one has afterwards.</param>
/// <param name="From">The row it was before; null means as bought.</param>
/// <param name="Factor">Mass after over mass before, above 0; null when no tested figure is known.</param>
/// <param name="Source">Source id; null when the factor is unknown.</param>
/// <param name="Note">What the figure belongs to.</param>
public sealed record Preparation(string Id, string? From, PreparationStep Step, double? Factor, string? Source, string Note);
