using System.Diagnostics;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Recipes.Views;
using Doughwright.App.Tests.Desk.Asking;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk.Recipes;

/// <summary>What a person does on the desk, and what it comes to.</summary>
public sealed class RecipeDeskTests : IDisposable
{
    private readonly Bench bench = new();
    private readonly RecipeDesk desk;

    public RecipeDeskTests() => desk = new(bench.Shelf, Words.Shipped, new());

    public void Dispose()
    {
        desk.Dispose();
        bench.Dispose();
    }

    [Fact]
    public void AnAddress_MeansWhatItSays()
    {
        Open("?kitchen=winter-cottage");
        Assert.Empty(desk.State!.Here.Solutions);
        Assert.Equal("/recipes/potato-rolls?kitchen=winter-cottage", desk.Address);
    }

    [Fact]
    public async Task Picking_KeepsTheDoughOfHome_AndTheWayBackDropsIt()
    {
        Open();
        await desk.Pick("winter-cottage");
        Assert.Equal("/recipes/potato-rolls?kitchen=winter-cottage&dough=26C&free=scald,potato", desk.Address);
        Assert.Equal(26, desk.State!.Here.Components.Single(part => part.Id == "dough").Mixed!.Value.Likely.Celsius, 6);
        await desk.Pick(null);
        Assert.Equal("/recipes/potato-rolls", desk.Address);
        Assert.True(desk.State!.Here.AtHome);
    }

    [Fact]
    public async Task AsWritten_StaysAsWritten_FromKitchenToKitchen()
    {
        Open();
        await desk.Pick("winter-cottage");
        await desk.Set("free", "");
        Assert.Equal("/recipes/potato-rolls?kitchen=winter-cottage&as-written", desk.Address);
        await desk.Set("air", "15");
        Assert.Equal("/recipes/potato-rolls?kitchen=winter-cottage&air=15C&as-written", desk.Address);
        await desk.Set("free", "scald,potato");
        Assert.Equal("/recipes/potato-rolls?kitchen=winter-cottage&air=15C&dough=26C&free=scald,potato", desk.Address);
    }

    [Fact]
    public async Task ARefusedValue_LeavesTheLastGoodOne_AndIsTold()
    {
        Open();
        await desk.Set("air", "18");
        await desk.Set("air", "99");
        Assert.Equal(18, desk.State!.Here.Kitchen.Air.At(Duration.Zero).Celsius);
        Assert.Equal("99C", desk.State.Setting.RefusalOf("air")!.Typed);
        await desk.Set("air", "19");
        Assert.Empty(desk.State!.Setting.Refusals);
        Assert.Equal(19, desk.State.Here.Kitchen.Air.At(Duration.Zero).Celsius);
    }

    [Fact]
    public async Task WhileTyping_NothingIsRefusedYet()
    {
        Open();
        await desk.Type("air", "-");
        Assert.Empty(desk.State!.Setting.Refusals);
        Assert.Equal(21, Air);
        await desk.Type("air", "1");
        Assert.Equal(1, Air);
        await desk.Type("air", "17.");
        Assert.Equal(21, Air);
        await desk.Type("air", "17.0");
        await desk.Set("air", "17.0");
        Assert.Equal(17, Air);
    }

    [Theory]
    [InlineData("9999")]
    [InlineData("17x")]
    [InlineData("-")]
    [InlineData("")]
    public async Task ATextThatIsRefused_PutsBackWhatHeldBeforeItsFirstKey(string typed)
    {
        Open();
        await desk.Set("air", "18");
        var address = desk.Address;
        await desk.Type("air", "");
        for (var keys = 1; keys <= typed.Length; keys++)
        {
            await desk.Type("air", typed[..keys]);
        }

        await desk.Set("air", typed);
        Assert.Equal(18, Air);
        Assert.Equal(address, desk.Address);
        Assert.NotNull(desk.State!.Setting.RefusalOf("air"));
    }

    [Theory]
    [InlineData("air", "hot", "21 °C")]
    [InlineData("altitude", "9999", "5 m")]
    public async Task ARefusedField_SaysWhatIsUsedMeanwhile(string option, string typed, string used)
    {
        Open();
        await desk.Set(option, typed);
        Assert.EndsWith($"Until then {used} is used.", desk.State!.Setting.RefusalOf(option)!.WayOut.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("air", "21 °C")]
    [InlineData("altitude", "5 m")]
    [InlineData("tap", "12 °C")]
    public async Task AnEmptiedField_SaysWhatIsStillUsed(string option, string used)
    {
        Open();
        await desk.Set(option, "");
        var refusal = desk.State!.Setting.RefusalOf(option)!;
        Assert.Equal("", refusal.Typed);
        Assert.Contains($"nothing is written; {used} is still used", refusal.Message.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheKitchensOwnValue_IsNotAskedFor()
    {
        Open();
        await desk.Set("air", "17");
        await desk.Set("air", "21");
        Assert.Equal("/recipes/potato-rolls", desk.Address);
    }

    [Fact]
    public async Task BareNumbers_AreInTheUnitOfTheirField()
    {
        desk.Open("potato-rolls", Question.Of("?measures=us"), MeasureSystem.Us);
        await desk.Set("air", "63");
        await desk.Set("altitude", "4000");
        Assert.Equal("/recipes/potato-rolls?air=63F&altitude=4000ft&dough=26C&free=scald,potato&measures=us", desk.Address);
        await desk.Set("air", "17 C");
        Assert.Equal(17, desk.State!.Here.Kitchen.Air.At(Duration.Zero).Celsius);
    }

    [Fact]
    public async Task TheLatest_IsWhatStays_HoweverFastItComes()
    {
        Open();
        var changes = Enumerable.Range(5, 25).Select(air => desk.Set("air", $"{air}")).ToArray();
        await Task.WhenAll(changes);
        Assert.Equal(29, desk.State!.Here.Kitchen.Air.At(Duration.Zero).Celsius);
        Assert.Contains("air=29C", desk.Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AKeystroke_IsSeenAtOnce()
    {
        Open();
        var voice = new Voice(Words.Shipped, MeasureSystem.Metric);
        var times = new List<double>();
        for (var i = 0; i < 60; i++)
        {
            var clock = Stopwatch.StartNew();
            await desk.Type("air", $"{12 + (i % 7)}");
            Sheet.Of(desk.State!, desk.Kitchens, voice);
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        // The bench tells what it takes; this only guards against five times what is wanted.
        Assert.True(times.Order().ElementAt(times.Count / 2) < 500, $"{times.Order().ElementAt(times.Count / 2)} ms.");
    }

    [Fact]
    public async Task ABake_IsToldAtOnce_AndReplacedByItsSection_WithAllThatComesAfter()
    {
        desk.Open("hearth-loaf", Question.Of("?kitchen=mountain&as-written"), MeasureSystem.Metric);
        var changed = 0;
        desk.Changed += () => changed++;
        var once = desk.State!;
        Assert.True(once.AwaitsBakes);
        Assert.Contains("being computed", Baking(once).State!.Text, StringComparison.Ordinal);
        Assert.Null(Baking(once).Picture);
        await desk.Bake();
        var told = desk.State!;
        Assert.Equal(1, changed);
        Assert.False(told.AwaitsBakes);
        var (was, now) = (once.Here.FindStep("bake")!.Time!.Value.Likely, told.Here.FindStep("bake")!.Time!.Value.Likely);
        Assert.Equal(told.Bakes!.Find("bake")!.Minutes, now);
        Assert.NotEqual(Show.Duration(was), Show.Duration(now));
        Assert.Equal((now - was).Minutes, (told.Here.Total!.Value.Likely - once.Here.Total!.Value.Likely).Minutes, 1e-6);
        Assert.Contains(Show.Duration(was), Baking(told).State!.Text, StringComparison.Ordinal);
        Assert.Contains(Show.Duration(now), Baking(told).State!.Text, StringComparison.Ordinal);
        Assert.NotNull(Baking(told).Picture);
        Assert.NotNull(Baking(told).Table);
    }

    [Fact]
    public async Task AtHome_TheAuthorsMinutesStand_AndTheSectionIsShown()
    {
        Open();
        var before = desk.State!.Here.FindStep("bake")!.Time;
        await desk.Bake();
        Assert.Equal(before, desk.State!.Here.FindStep("bake")!.Time);
        Assert.NotNull(Baking(desk.State).Picture);
    }

    [Fact]
    public async Task AnotherKitchen_EndsABakeThatIsBeingComputed_AndHasItsOwn()
    {
        Open("?kitchen=winter-cottage&as-written");
        var baking = desk.Bake();
        await desk.Pick("summer");
        await baking;
        Assert.True(desk.State!.AwaitsBakes);
        await desk.Bake();
        Assert.Equal(desk.State!.Bakes!.Find("bake")!.Minutes, desk.State.Here.FindStep("bake")!.Time!.Value.Likely);
        Assert.Equal("summer", desk.State.Setting.Question.First(Question.Kitchen));
    }

    [Fact]
    public async Task LeavingThePage_EndsABake()
    {
        Open("?kitchen=winter-cottage&as-written");
        var (changed, baking) = (false, desk.Bake());
        desk.Changed += () => changed = true;
        desk.Dispose();
        await baking;
        await desk.Bake();
        Assert.False(changed);
        Assert.True(desk.State!.AwaitsBakes);
    }

    [Fact]
    public async Task ASecondLook_HasTheBakeAtOnce_AndAnotherTextDoesNot()
    {
        var kept = new KeptBakes();
        using var first = new RecipeDesk(bench.Shelf, Words.Shipped, kept);
        using var second = new RecipeDesk(bench.Shelf, Words.Shipped, kept);
        first.Open("tin-loaf", Question.Of("?kitchen=mountain"), MeasureSystem.Metric);
        await first.Bake();
        second.Open("tin-loaf", Question.Of("?kitchen=mountain"), MeasureSystem.Metric);
        Assert.Equal(first.State!.Bakes, second.State!.Bakes);
        Assert.Equal(first.State.Here.Total, second.State.Here.Total);
        Assert.Equal(first.State.Home.Total, second.State.Home.Total);
        second.Open("tin-loaf", Question.Of("?kitchen=summer"), MeasureSystem.Metric);
        Assert.True(second.State!.AwaitsBakes);
        bench.WriteRecipe("tin-loaf", File.ReadAllText(House.PathTo("demo", "recipes", "tin-loaf.yaml")).Replace("salt: ", "salt: 1", StringComparison.Ordinal));
        second.Open("tin-loaf", Question.Of("?kitchen=mountain"), MeasureSystem.Metric);
        Assert.True(second.State!.AwaitsBakes);
    }

    private Matter Baking(DeskState state) =>
        Sheet.Of(state, desk.Kitchens, new(Words.Shipped, MeasureSystem.Metric)).Baked.Single(section => section.Id == "bake-bake").Matters.Single();

    private double Air => desk.State!.Here.Kitchen.Air.At(Duration.Zero).Celsius;

    private void Open(string query = "") => desk.Open("potato-rolls", Question.Of(query), MeasureSystem.Metric);
}
