using System.Text.Json;

namespace Doughwright.App.Tests.Commands;

/// <summary>The command place: what it takes, what it refuses, and that text and JSON tell the same.</summary>
public class PlaceTests
{
    private static readonly Run Cottage = Run.Of("place", House.PotatoRolls, "--to", "26C", "--kitchen", "winter-cottage", "--json");

    [Fact]
    public void Json_TellsPlacesWithWaterAndWarmth()
    {
        Assert.Equal(0, Cottage.ExitCode);
        using var json = JsonDocument.Parse(Cottage.Output);
        var places = json.RootElement.GetProperty("places").EnumerateArray().ToList();
        Assert.Equal(4, places.Count);
        Assert.Equal("bulk", json.RootElement.GetProperty("step").GetString());
        Assert.Equal(26, json.RootElement.GetProperty("targetCelsius").GetDouble());
        Assert.All(places.Where(place => place.GetProperty("reaches").GetBoolean()), place =>
            Assert.Equal(26, place.GetProperty("meanCelsius").GetDouble(), 0.3));
    }

    [Theory]
    [InlineData("lamp-outside-limits", "--to", "26C", "--lamp", "500W")]
    [InlineData("warm-place-outside-limits", "--to", "70C")]
    [InlineData("to-wanted")]
    [InlineData("step-not-rising", "--to", "26C", "--step", "mix")]
    [InlineData("step-unknown", "--to", "26C", "--step", "bukl")]
    public void WhatCannotBe_IsRefusedWithItsReason(string fault, params string[] options)
    {
        var run = Run.Of(["place", House.PotatoRolls, .. options]);
        Assert.Equal(2, run.ExitCode);
        var opening = Publishing.Wording.Words.Shipped[fault + ".message"].Split('{', '.')[0];
        Assert.True(opening.Length < 3 || run.Messages.Contains(opening, StringComparison.Ordinal), run.Messages);
        Assert.Empty(run.Output);
    }

    [Fact]
    public void Lamp_WithoutUnit_SaysWhichFits() => Assert.Contains("W", Run.Of("place", House.PotatoRolls, "--to", "26C", "--lamp", "15").Messages, StringComparison.Ordinal);

    [Fact]
    public void Proof_HasPlacesOfItsOwn()
    {
        using var json = JsonDocument.Parse(Run.Of("place", House.PotatoRolls, "--to", "30C", "--step", "proof", "--json").Output);
        Assert.Equal(["oven", "cupboard"], json.RootElement.GetProperty("places").EnumerateArray().Select(place => place.GetProperty("kind").GetString()!).Order().Reverse());
    }
}
