using Doughwright.App.Desk.Asking;

namespace Doughwright.App.Tests.Desk.Asking;

/// <summary>A question goes into an address and comes back as it was.</summary>
public sealed class QuestionTests
{
    [Theory]
    [InlineData("")]
    [InlineData("?kitchen=mountain")]
    [InlineData("?kitchen=mountain&air=17C&free=potato,scald")]
    [InlineData("?air=17C@22:00,21C@07:00&start=22:00&at=butter%3D20C&at=egg%3D5C&as-written")]
    [InlineData("?kitchen=a%26b%20%22c%22&colour=%3Cscript%3E")]
    public void WhatIsAsked_ComesBackFromTheAddress(string query)
    {
        var question = Question.Of(query);
        Assert.Equal(question, Question.Of(question.Query()));
        Assert.Equal(question.Query(), Question.Of(question.Query()).Query());
    }

    [Fact]
    public void Order_IsThatOfTheOptions_HoweverTyped() =>
        Assert.Equal("?kitchen=mountain&air=17C&dough=26C&free=potato,scald", Question.Of("?free=potato,scald&air=17C&dough=26C&kitchen=mountain").Query());

    [Fact]
    public void Setting_ReplacesAllOfThatName_AndNothingElse()
    {
        var question = Question.Of("?air=17C&air=18C&tap=9C");
        Assert.Equal("?air=19C&tap=9C", question.With("air", "19C").Query());
        Assert.Equal("?tap=9C", question.With("air", null).Query());
    }

    [Fact]
    public void NamesOfThePageItself_AreNotAsked() =>
        Assert.Equal("?tap=9C", Question.Of("?first=home&second=mountain&tap=9C", "first", "second").Query());
}
