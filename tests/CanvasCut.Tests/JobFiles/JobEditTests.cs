using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

public sealed class JobEditTests
{
    private const string Job = "# Jolle 🙂, Größe\r\n[top] # \"length\"\r\n  length  =\t\"2000 mm\"  # \"2000 mm\" am Boot\r\nwidth='70\"'\r\n[[top.bow]]\r\nstation = \"1 in\"\r\n[[top.bow]]\r\nstation = \"40 in\"\r\n";

    [Fact]
    public void Only_the_characters_of_the_values_change()
    {
        var edit = JobEdit.Of(Job, [("top.length", "2001.5 mm"), ("top.width", "70 1/16 in"), ("top.bow[2].station", "40 1/2 in"), ("top.bow[1].station", "1 in"), ("top.bow[2].crown", "95 mm")]);

        Assert.Equal("# Jolle 🙂, Größe\r\n[top] # \"length\"\r\n  length  =\t\"2001.5 mm\"  # \"2000 mm\" am Boot\r\nwidth=\"70 1/16 in\"\r\n[[top.bow]]\r\nstation = \"1 in\"\r\n[[top.bow]]\r\nstation = \"40 1/2 in\"\r\n", edit.Text);
        Assert.Equal([new("top.length", "2000 mm", "2001.5 mm"), new("top.width", "70\"", "70 1/16 in"), new("top.bow[2].station", "40 in", "40 1/2 in")], edit.Exchanged);
        Assert.Equal("top.bow[2].crown", Assert.Single(edit.Absent));
    }

    [Fact]
    public void Values_within_braces_are_exchanged_too() =>
        Assert.Equal("top = { length = \"3 m\", width = \"1 m\" }", JobEdit.Of("top = { length = \"2 m\", width = \"1 m\" }", [("top.length", "3 m")]).Text);

    [Theory]
    [InlineData("[top]\n[[top.bow]]\n[[top.bow]]", 2)]
    [InlineData("[top]", 0)]
    [InlineData("[top", null)]
    [InlineData("[top]\nlength = \"1 m\"\nlength = \"2 m\"", null)]
    public void Bows_are_counted_in_what_is_toml(string text, int? bows) => Assert.Equal(bows, JobEdit.BowsIn(text));
}
