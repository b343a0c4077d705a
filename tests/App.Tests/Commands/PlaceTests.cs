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

    /// <summary>Butter on 35 % of the flour holds to about 28 °C (common practice, no source): what a rehearsal says of such a place, this says too.</summary>
    [Theory]
    [InlineData("proof", "38C", true)]
    [InlineData("bulk", "30C", true)]
    [InlineData("proof", "27C", false)]
    public void AWarmPlaceForARichDough_TellsOfItsButter(string step, string target, bool isTold)
    {
        var ring = House.PotatoRolls.Replace("potato-rolls", "pilot-ring", StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run.Of("place", ring, "--to", target, "--step", step, "--json").Output);
        Assert.Equal(isTold, json.RootElement.GetProperty("findings").EnumerateArray().Any(finding =>
            finding.GetProperty("kind").GetString() == "place-too-warm-for-butter" && finding.GetProperty("place").GetString() == "steps." + step));
        Assert.Equal(isTold, Place(ring, "--to", target, "--step", step).Contains("With 34.8 % butter on the flour", StringComparison.Ordinal));
    }

    private static string Place(params string[] options) => string.Join(' ', Run.Of(["place", .. options]).Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void CooledPlace_IsToldInWordsForCooling()
    {
        var told = Place(House.PotatoRolls, "--to", "26C", "--air", "32C");
        Assert.Contains("so that the walls are cool", told, StringComparison.Ordinal);
        Assert.Contains("add cold water", told, StringComparison.Ordinal);
        Assert.Contains("Or warmer and quicker", told, StringComparison.Ordinal);
        Assert.DoesNotContain("walls are warm", told, StringComparison.Ordinal);
        Assert.DoesNotContain("add hot water", told, StringComparison.Ordinal);
        Assert.DoesNotContain("colder and slower", told, StringComparison.Ordinal);
    }

    [Fact]
    public void WarmedPlace_IsToldInWordsForWarming()
    {
        var told = Place(House.PotatoRolls, "--to", "26C", "--air", "17C");
        Assert.Contains("so that the walls are warm", told, StringComparison.Ordinal);
        Assert.Contains("Or colder and slower", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("26C", "17C")]
    [InlineData("26C", "32C")]
    [InlineData("38C", "8C")]
    public void UsMeasures_HoldNoMetricTemperature(string target, string air)
    {
        var told = Place(House.PotatoRolls, "--to", target, "--air", air, "--measures", "us");
        Assert.DoesNotContain("°C", told, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d\s*l of water", told);
    }

    [Fact]
    public void JugAndBath_AreWarnedAboutEachInItsOwnWords()
    {
        var told = Place(House.PotatoRolls, "--to", "38C", "--air", "8C");
        Assert.Contains("The jug must not touch the bowl", told, StringComparison.Ordinal);
        Assert.Contains("This bath is never hotter than 40 °C", told, StringComparison.Ordinal);
    }
}
