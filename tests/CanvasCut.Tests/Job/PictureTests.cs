using System.Text;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>The pictures that the README shows are what the program draws today.</summary>
public sealed class PictureTests
{
    [Theory]
    [InlineData("placement.svg")]
    [InlineData("cut-plan.svg")]
    [InlineData("top-shape.svg")]
    [InlineData("pieces/pocket-forward-port.svg")]
    public void A_picture_in_the_docs_is_the_examples(string name)
    {
        var file = ResultFiles.Of(ExampleTests.OutcomeOf("three-bow-middle-tube")).Single(file => file.Name == name);

        Golden.Matches($"docs/pictures/{Path.GetFileName(name)}", Encoding.UTF8.GetString(file.Bytes.Span));
    }
}
