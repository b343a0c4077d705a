using Doughwright.App.Commands;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Commands;

/// <summary>Kitchens by name and from options.</summary>
public class KitchenTests
{
    private static (Given Given, Options Options) Typed(params string[] arguments)
    {
        var options = new Options();
        return (new(options.Parse(["rehearse", "x", .. arguments]), new(new(Words.Shipped, MeasureSystem.Metric))), options);
    }

    private static KitchenOptions Overlay(params string[] arguments)
    {
        var (given, options) = Typed(arguments);
        var overlay = KitchenOptions.Read(given, options);
        Assert.Empty(given.Faults.All);
        return overlay;
    }

    private static readonly Kitchen Home = new() { Air = AirProfile.Constant(Temperature.FromCelsius(21)) };

    [Fact]
    public void ShippedKitchens_AreFoundByFileNameAndByTheirOwnName()
    {
        var (given, _) = Typed();
        foreach (var name in KitchenShelf.Names)
        {
            var kitchen = KitchenShelf.Find(name, [], given.Faults)!.Value.Kitchen!;
            Assert.Equal(kitchen, KitchenShelf.Find(kitchen.Name, [], given.Faults)!.Value.Kitchen);
        }

        Assert.Empty(given.Faults.All);
    }

    [Fact]
    public void KitchenFile_IsReadFromItsPath()
    {
        var (given, _) = Typed();
        var found = KitchenShelf.Find(House.PathTo("demo", "kitchens", "winter-cottage.yaml"), [], given.Faults)!.Value;
        Assert.Equal(KitchenShelf.Find("winter-cottage", [], given.Faults)!.Value.Kitchen, found.Kitchen);
    }

    [Fact]
    public void AirAlone_MovesShelfAndProofingPlace()
    {
        var kitchen = Overlay("--air", "-3C").Over(Home);
        Assert.Equal(-3, kitchen.Shelf.Celsius);
        Assert.Null(kitchen.ProofingPlace);
    }

    [Fact]
    public void WhatIsGivenBesideAir_Stays()
    {
        var kitchen = Overlay("--air=17C", "--ingredients", "63F", "--proof", "28C").Over(Home);
        Assert.Equal(17, kitchen.Air.At(Duration.Zero).Celsius);
        Assert.Equal((63.0 - 32) * 5 / 9, kitchen.Shelf.Celsius, 12);
        Assert.Equal(28, kitchen.ProofingPlace!.Value.Celsius);
    }

    [Theory]
    [InlineData("22:00", 17, 9 * 60, 21)]
    [InlineData("07:00", 21, 15 * 60, 17)]
    [InlineData("06:59", 17, 1, 21)]
    [InlineData("0:00", 17, 7 * 60, 21)]
    public void Profile_BecomesElapsedTimeFromTheStart(string start, double now, double changeAfter, double then)
    {
        var air = Overlay("--air", "17C@22:00,21C@07:00", "--start", start).Over(Home).Air;
        Assert.Equal(now, air.At(Duration.Zero).Celsius);
        Assert.Equal(now, air.At(Duration.FromMinutes(changeAfter - 0.5)).Celsius);
        Assert.Equal(then, air.At(Duration.FromMinutes(changeAfter)).Celsius);
    }

    [Fact]
    public void Profile_IsTheSameEveryDay()
    {
        var air = Overlay("--air", "21C@07:00,17C@22:00", "--start", "12:00").Over(Home).Air;
        foreach (var day in new[] { 0, 1, 13 })
        {
            Assert.Equal(17, air.At(Duration.FromHours((24 * day) + 11)).Celsius);
            Assert.Equal(21, air.At(Duration.FromHours((24 * day) + 20)).Celsius);
        }
    }

    /// <summary>Nothing is worked out for a kitchen that cannot be, as nothing is for such a value behind an option.</summary>
    [Theory]
    [InlineData("air: 90 C", "Air of 90 °C lies outside")]
    [InlineData("air: 21 C\naltitude: 9000 m", "An altitude of 9,000 m lies outside")]
    [InlineData("air: 21 C\nfridge: 60 C", "60 °C")]
    public void KitchenOutsideWhatCanBe_IsNotWorkedWith(string said, string reason)
    {
        var file = Path.Join(Directory.CreateTempSubdirectory("kitchen-").FullName, "pit.yaml");
        File.WriteAllText(file, $"doughwright: 1\nkitchen: Pit\n{said}\n");
        var run = Run.Of("rehearse", House.PotatoRolls, "--kitchen", file);
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
        Assert.Equal(ExitCode.Errors, run.ExitCode);
        Assert.Contains("No kitchen is like that", run.Messages, StringComparison.Ordinal);
        Assert.Contains(reason, run.Output.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("Bulk", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void NothingAsked_IsHome() => Assert.True(Overlay().IsEmpty);
}
