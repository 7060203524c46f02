using System.Collections.Immutable;
using CanvasCut.Language;

namespace CanvasCut.Design;

/// <summary>What an answer means for the work.</summary>
public enum TopRemedy
{
    /// <summary>Sewing to this top is work thrown away.</summary>
    Stop,

    /// <summary>Something is to be done first.</summary>
    MendFirst,
}

/// <summary>A question about the top, so put that "no" is the good answer.</summary>
/// <param name="Field">Its field in the job file.</param>
/// <param name="Asks">The question.</param>
/// <param name="Remedy">What "yes" means.</param>
/// <param name="Reason">Why, and what to do.</param>
public sealed record TopQuestion(string Field, string Asks, TopRemedy Remedy, string Reason)
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<TopQuestion> All =>
    [
        new("stitch_holes_tear", Say.Of("Does a needle hole open into a tear when you pull the cloth hard beside a seam?"), TopRemedy.Stop, Say.Of("the cloth no longer holds a stitch; make a new top first")),
        new("replaced_soon", Say.Of("Will this top be replaced within two seasons?"), TopRemedy.Stop, Say.Of("zippers and pockets would go with it; wait for the new top")),
        new("no_longer_reaches", Say.Of("Has the cloth shrunk so far that it no longer reaches its own fasteners?"), TopRemedy.Stop, Say.Of("it will pull what is sewn to it out of shape; make a new top first")),
        new("thread_breaks", Say.Of("Does a stitch break when you pick at it with a thumbnail?"), TopRemedy.MendFirst, Say.Of("the old seams go before the new ones; restitch the top first")),
        new("worn_through", Say.Of("Does light show through where it lies on a tube?"), TopRemedy.MendFirst, Say.Of("patch the worn places first")),
        new("leaks", Say.Of("Does water come through within minutes of rain?"), TopRemedy.MendFirst, Say.Of("under a panel it cannot be proofed; proof it first")),
        new("slack", Say.Of("Does it sag or flap when it is stretched as you use it?"), TopRemedy.MendFirst, Say.Of("a panel on slack cloth flexes and collects water; take up the slack or add a bow first")),
        new("frame_moves", Say.Of("Can you rack the frame by hand, or is a fitting cracked or loose?"), TopRemedy.MendFirst, Say.Of("mend and brace the frame first, then measure again")),
    ];
}

/// <summary>The answers to <see cref="TopQuestion.All"/>, in that order.</summary>
/// <param name="Answers">True for yes; null when not answered.</param>
public sealed record TopState(ImmutableArray<bool?> Answers)
{
    /// <summary>Nothing was answered.</summary>
    public static TopState Unknown { get; } = new([.. TopQuestion.All.Select(_ => (bool?)null)]);

    /// <summary>The questions with a given answer; null for those without one.</summary>
    public ImmutableArray<TopQuestion> Answered(bool? answer) =>
        [.. TopQuestion.All.Zip(Answers).Where(pair => pair.Second == answer).Select(pair => pair.First)];
}
