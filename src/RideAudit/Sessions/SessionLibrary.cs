using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>The sessions that stand where the coach has written none of their own, each purpose from its first step to its last.</summary>
/// <remarks>
/// Common practice, no source. The shapes are common property of the trade; shares are chosen so that a rider who holds them, with the unsteadiness of real riding,
/// rides the kind the session claims: half a step inside every limit of the kinds, never on one.
/// </remarks>
internal static class SessionLibrary
{
    private const string WarmUp = "15 min easy, ";
    private const string End = ", easy to the end";

    /// <summary>All sessions, each purpose in the order of its steps.</summary>
    public static ImmutableArray<LibrarySession> All { get; } =
    [
        .. Ladder(SessionPurpose.ShortIntervals, PlannedKind.High,
            ("six ones", Experience.New, "6 x 1 min 130-140 %, 2 min easy between"),
            ("eight ones", Experience.New, "8 x 1 min 130-138 %, 2 min easy between"),
            ("two eights of thirty-thirty", Experience.Regular, "2 x (8 x 30/30 s 130-138 %), 5 min easy between"),
            ("ten ones", Experience.Regular, "10 x 1 min 128-136 %, 90 s easy between"),
            ("two tens of thirty-thirty", Experience.Regular, "2 x (10 x 30/30 s 130-138 %), 5 min easy between"),
            ("two eights of forty-twenty", Experience.Regular, "2 x (8 x 40/20 s 126-132 %), 6 min easy between"),
            ("three tens of thirty-thirty", Experience.Racing, "3 x (10 x 30/30 s 130-136 %), 5 min easy between"),
            ("three eights of forty-twenty", Experience.Racing, "3 x (8 x 40/20 s 126-132 %), 6 min easy between")),
        .. Ladder(SessionPurpose.LongIntervals, PlannedKind.High,
            ("four threes", Experience.New, "4 x 3 min 111-116 %, 3 min easy between"),
            ("five threes", Experience.New, "5 x 3 min 110-115 %, 3 min easy between"),
            ("four fours", Experience.Regular, "4 x 4 min 109-113 %, 3 min easy between"),
            ("six threes", Experience.Regular, "6 x 3 min 110-115 %, 3 min easy between"),
            ("five fours", Experience.Regular, "5 x 4 min 108-113 %, 3 min easy between"),
            ("four fives", Experience.Regular, "4 x 5 min 108-112 %, 4 min easy between"),
            ("five fives", Experience.Racing, "5 x 5 min 107-111 %, 4 min easy between"),
            ("four eights", Experience.Racing, "4 x 8 min 106-109 %, 3 min easy between")),
        .. Ladder(SessionPurpose.Threshold, PlannedKind.Threshold,
            ("two tens at threshold", Experience.New, "2 x 10 min 93-97 %, 5 min easy between"),
            ("three tens at threshold", Experience.New, "3 x 10 min 93-97 %, 5 min easy between"),
            ("three twelves at threshold", Experience.Regular, "3 x 12 min 93-97 %, 5 min easy between"),
            ("two twenties at threshold", Experience.Regular, "2 x 20 min 92-96 %, 6 min easy between"),
            ("three fifteens at threshold", Experience.Regular, "3 x 15 min 92-96 %, 5 min easy between"),
            ("three twenties at threshold", Experience.Racing, "3 x 20 min 91-95 %, 6 min easy between")),
        .. Ladder(SessionPurpose.OverUnders, PlannedKind.Threshold,
            ("two nines over and under", Experience.Regular, "2 x (3 x (2 min 86-90 %, 1 min 100-103 %)), 5 min easy between"),
            ("three nines over and under", Experience.Regular, "3 x (3 x (2 min 86-90 %, 1 min 100-103 %)), 5 min easy between"),
            ("two fifteens over and under", Experience.Regular, "2 x (5 x (2 min 86-90 %, 1 min 100-103 %)), 6 min easy between"),
            ("three twelves over and under", Experience.Racing, "3 x (4 x (2 min 86-90 %, 1 min 100-103 %)), 5 min easy between")),
        .. Ladder(SessionPurpose.SweetSpot, PlannedKind.Threshold,
            ("two twelves of tempo", Experience.New, "2 x 12 min 86-90 %, 5 min easy between"),
            ("three tens of tempo", Experience.New, "3 x 10 min 86-90 %, 4 min easy between"),
            ("three twelves of tempo", Experience.New, "3 x 12 min 86-90 %, 4 min easy between"),
            ("two twenties of tempo", Experience.Regular, "2 x 20 min 86-90 %, 5 min easy between"),
            ("three fifteens of tempo", Experience.Regular, "3 x 15 min 86-90 %, 5 min easy between"),
            ("three twenties of tempo", Experience.Regular, "3 x 20 min 86-90 %, 5 min easy between"),
            ("two thirties of tempo", Experience.Racing, "2 x 30 min 86-90 %, 6 min easy between")),
        .. Ladder(SessionPurpose.Sprints, PlannedKind.High,
            ("five thirties flat out", Experience.Regular, "5 x 30 s all out, 5 min easy between"),
            ("twelve sprints", Experience.Regular, "12 x 12 s all out, 2 min 30 s easy between"),
            ("eight twenties flat out", Experience.Racing, "8 x 20 s all out, 4 min easy between")),
        .. Easy(SessionPurpose.Openers, PlannedKind.Endurance, 45,
            ("openers", Experience.New, "20 min easy, 3 x 1 min 100-105 %, 2 min easy between, 5 min easy, 2 x 10 s all out, 3 min easy between, easy to the end")),
        .. Easy(SessionPurpose.Test, PlannedKind.High, 70,
            ("twenty-minute test", Experience.New, "15 min easy, 3 x 1 min 90-100 %, 1 min easy between, 5 min easy, 5 min all out, 10 min easy, 20 min all out, easy to the end")),
        .. Easy(SessionPurpose.Endurance, PlannedKind.Endurance, 30,
            ("steady and easy", Experience.New, "63-69 % to the end"),
            ("easy with four sprints", Experience.Regular, "30 min 62-68 %, 4 x 8 s all out, 5 min easy between, 62-68 % to the end")),
        .. Easy(SessionPurpose.Long, PlannedKind.Long, 60,
            ("long and easy", Experience.New, "15 min easy, 62-68 % to the end")),
        .. Easy(SessionPurpose.Recovery, PlannedKind.Recovery, 20,
            ("very easy", Experience.New, "very easy to the end")),
    ];

    /// <summary>The test of threshold power.</summary>
    public static LibrarySession Test { get; } = All.Single(s => s.Purpose == SessionPurpose.Test);

    /// <summary>The easy ride with some sprints in it.</summary>
    public static LibrarySession EasyWithSprints { get; } = All.Single(s => s.Name == "easy with four sprints");

    /// <summary>The session of a name; null when there is none.</summary>
    /// <param name="name">In any case of letters.</param>
    public static LibrarySession? Find(string name) =>
        All.FirstOrDefault(s => s.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The sessions of a purpose that a rider may ride in the time of a day, from the first step to the last.</summary>
    /// <param name="purpose">What for.</param>
    /// <param name="experience">The rider’s experience.</param>
    /// <param name="minutes">The day’s time, min.</param>
    public static ImmutableArray<LibrarySession> For(SessionPurpose purpose, Experience experience, int minutes) =>
        [.. All.Where(s => s.Purpose == purpose && s.Experience <= experience && s.ShortestDay <= minutes)];

    /// <summary>The session of a purpose after so many of them: a step on each time, the last step from then on.</summary>
    /// <param name="purpose">What for.</param>
    /// <param name="experience">The rider’s experience.</param>
    /// <param name="minutes">The day’s time, min.</param>
    /// <param name="ridden">Sessions of the purpose ridden so far in this build-up, 0 or more.</param>
    /// <returns>Null when none fits the day.</returns>
    public static LibrarySession? Step(SessionPurpose purpose, Experience experience, int minutes, int ridden)
    {
        var steps = For(purpose, experience, minutes);
        return steps.IsEmpty ? null : steps[Math.Min(ridden, steps.Length - 1)];
    }

    private static IEnumerable<LibrarySession> Ladder(
        SessionPurpose purpose, PlannedKind kind, params (string Name, Experience Experience, string Work)[] steps) =>
        Easy(purpose, kind, 0, [.. steps.Select(s => (s.Name, s.Experience, WarmUp + s.Work + End))]);

    private static IEnumerable<LibrarySession> Easy(
        SessionPurpose purpose, PlannedKind kind, int shortestDay, params (string Name, Experience Experience, string Blocks)[] sessions) =>
        sessions.Select(s => Of(s.Name, purpose, kind, s.Experience, s.Blocks, shortestDay));

    private static LibrarySession Of(string name, SessionPurpose purpose, PlannedKind kind, Experience experience, string text, int shortestDay)
    {
        var blocks = SessionBlocks.Read(text, out var mistakes)
            ?? throw new InvalidOperationException($"{name}: {mistakes[0].Found} at letter {mistakes[0].Column}.");
        return new LibrarySession(name, purpose, kind, experience, blocks, Math.Max(shortestDay, FittedSession.LeastMinutes(blocks)));
    }
}
