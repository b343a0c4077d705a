using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Compare;

namespace Doughwright.App.Tests.Desk.Compare;

/// <summary>The address of two kitchens.</summary>
public class CompareQuestionTests
{
    [Theory]
    [InlineData("?second=mountain")]
    [InlineData("?first=summer&second=&as-written")]
    [InlineData("?second=a%26b&air=17C&dough=26C&free=potato,scald")]
    public void Address_ComesBackAsItWas(string query) => Assert.Equal(query, CompareQuestion.Of(query, "other").Query());

    [Fact]
    public void NothingAsked_IsHomeBesideAnother() => Assert.Equal("?second=other", CompareQuestion.Of("", "other").Query());

    [Fact]
    public void ValuesWithoutAKitchen_AreAskedOfHome() => Assert.Equal("?second=&air=17C&as-written", CompareQuestion.Of("?air=17C", "other").Query());

    [Fact]
    public void OtherKitchen_LeavesTheValuesOfTheOneBefore()
    {
        var asked = CompareQuestion.Of("?second=mountain&air=17C&at=butter%3D20C&dough=26C&free=potato&measures=us", "other").WithSecond("summer");
        Assert.Equal("summer", asked.Second);
        Assert.Equal(["at", Question.Measures], asked.Over.Items.Select(item => item.Name));
    }

    [Fact]
    public void FirstKitchen_IsAskedNothingElse() =>
        Assert.Equal("?kitchen=summer", CompareQuestion.Of("?first=summer&second=mountain&air=17C&dough=26C&free=potato", "other").OfFirst.Query());
}
