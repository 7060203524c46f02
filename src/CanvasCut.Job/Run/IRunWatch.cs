using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Someone who is told how a run gets on, from any thread.</summary>
public interface IRunWatch
{
    /// <summary>A stage begins to be worked out.</summary>
    void Begins(RunStage stage);

    /// <summary>A stage is worked out, or was given up.</summary>
    void Ends(RunStage stage);

    /// <summary>A shorter cut plan was found.</summary>
    void Plans(PlanProgress progress);
}
