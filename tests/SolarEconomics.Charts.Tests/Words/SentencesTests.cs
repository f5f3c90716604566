namespace SolarEconomics.Charts.Tests;

public sealed class SentencesTests
{
    [Theory]
    [InlineData("13.0 years", "after the first purchase. The straight line says 6.0.", "13.0 years after the first purchase.")]
    [InlineData("13.0 years", "after the first purchase; 8 of 10 futures lie near.", "13.0 years after the first purchase.")]
    [InlineData("4.1 kWh", "lost, i.e. little", "4.1 kWh lost, i.e. little")]
    [InlineData("", "Nothing to add", "Nothing to add")]
    public void The_headline_is_the_first_sentence(string figure, string words, string expected) =>
        Assert.Equal(expected, Sentences.Headline(new Finding(figure, words)));

    [Fact]
    public void Lines_break_at_blanks_and_a_long_word_stands_alone() =>
        Assert.Equal(["a bb", "measurement", "c"], Sentences.Wrap("a bb measurement c", 5));

    [Fact]
    public void Marks_that_plotly_would_read_as_tags_are_escaped() =>
        Assert.Equal("a &lt;b&gt; &amp; c", Sentences.Escape("a <b> & c"));
}
