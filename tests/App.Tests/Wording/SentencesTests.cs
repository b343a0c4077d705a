using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Wording;

public class SentencesTests
{
    [Theory]
    [InlineData("Not known. Nearest: {near}.", "Not known.")]
    [InlineData("Write {near} if that is meant. Known: {far:asked}.", "Known: {far:asked}.")]
    [InlineData("No such step. There are {far}. {near}", "No such step. There are {far}.")]
    [InlineData("Write {near}.", "")]
    [InlineData("Nearest: {far}.", "Nearest: {far}.")]
    public void SentenceAboutSomethingEmpty_IsLeftOut(string words, string told) =>
        Assert.Equal(told, Sentences.WithoutEmpty(words, name => name == "near" ? "" : "x"));

    [Fact]
    public void SentenceAboutSomethingUnknown_StaysForATestToFind() => Assert.Equal("Nearest: {near}.", Sentences.WithoutEmpty("Nearest: {near}.", _ => null));
}
