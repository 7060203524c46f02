using System.Collections.Immutable;

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
    public static ImmutableArray<TopQuestion> All { get; } =
    [
        new("stitch_holes_tear", "Does a needle hole open into a tear when you pull the cloth hard beside a seam?", TopRemedy.Stop, "the cloth no longer holds a stitch; make a new top first"),
        new("replaced_soon", "Will this top be replaced within two seasons?", TopRemedy.Stop, "zippers and pockets would go with it; wait for the new top"),
        new("no_longer_reaches", "Has the cloth shrunk so far that it no longer reaches its own fasteners?", TopRemedy.Stop, "it will pull what is sewn to it out of shape; make a new top first"),
        new("thread_breaks", "Does a stitch break when you pick at it with a thumbnail?", TopRemedy.MendFirst, "the old seams go before the new ones; restitch the top first"),
        new("worn_through", "Does light show through where it lies on a tube?", TopRemedy.MendFirst, "patch the worn places first"),
        new("leaks", "Does water come through within minutes of rain?", TopRemedy.MendFirst, "under a panel it cannot be proofed; proof it first"),
        new("slack", "Does it sag or flap when it is stretched as you use it?", TopRemedy.MendFirst, "a panel on slack cloth flexes and collects water; take up the slack or add a bow first"),
        new("frame_moves", "Can you rack the frame by hand, or is a fitting cracked or loose?", TopRemedy.MendFirst, "mend and brace the frame first, then measure again"),
    ];
}

/// <summary>The answers to <see cref="TopQuestion.All"/>, in that order.</summary>
/// <param name="Answers">True for yes; null when not answered.</param>
public sealed record TopState(ImmutableArray<bool?> Answers)
{
    /// <summary>Nothing was answered.</summary>
    public static TopState Unknown { get; } = new([.. TopQuestion.All.Select(_ => (bool?)null)]);

    /// <summary>The questions with a given answer; null for those without one.</summary>
    public IEnumerable<TopQuestion> Answered(bool? answer) => TopQuestion.All.Zip(Answers).Where(pair => pair.Second == answer).Select(pair => pair.First);
}
