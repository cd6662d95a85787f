using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Rules;

/// <summary>What every rule says of itself, whatever it reads of a week: its names, its place, its grounds and its limits.</summary>
internal abstract class Rule : IRule
{
    public const string NoSource = "common practice, no source";

    public abstract string Id { get; }

    public abstract string Name { get; }

    /// <summary>What it is called before the word rule: <c>spacing</c>.</summary>
    public virtual string ShortName => char.ToLowerInvariant(Name[0]) + Name[1..];

    /// <summary>What a change that broke it did to the week, in the past tense and without a subject.</summary>
    /// <param name="finding">What it said of the week.</param>
    /// <param name="riddenOn">The day that the change put a ride on; null where it took one away.</param>
    public virtual string Effect(Finding finding, LocalDate? riddenOn) => $"went against the rule on {char.ToLowerInvariant(Name[0])}{Name[1..]}";

    public abstract Standing Standing { get; }

    /// <summary>A smallest change is sought for it when it is broken.</summary>
    public virtual bool IsChangeSought => false;

    public abstract Evidence Evidence { get; }

    public abstract string Source { get; }

    /// <summary>The source by author and year, and what must not be lost with the rest: that they ran, that practice sets the limits, that it is from memory; null where it is short as it is.</summary>
    public virtual string? SourceInShort => null;

    /// <summary>Names of the limits it uses, as in the rider file.</summary>
    public abstract ImmutableArray<string> LimitNames { get; }

    public abstract string Ask(PlanInForce plan);

    public ImmutableArray<NamedNumber> LimitsOf(PlanInForce plan)
    {
        var numbers = ImmutableArray.CreateBuilder<NamedNumber>(LimitNames.Length);
        foreach (var name in LimitNames)
        {
            var limit = LimitCatalogue.Get(name);
            numbers.Add(NamedNumber.Of(name, limit.Read(plan.Limits), 4, limit.InWords));
        }
        return numbers.MoveToImmutable();
    }

    public Finding Judge(WeekUnderReview week) => Judge(new JudgedWeek(week));

    public abstract Finding Judge(JudgedWeek week);

    /// <summary>The verdict without the words: what a search over many weeks calls.</summary>
    public abstract Call Decide(JudgedWeek week);

    /// <summary>Whether a changed week has what the rule asks for, and not only its letter.</summary>
    public virtual bool IsCured(JudgedWeek week) => Decide(week).Verdict == Verdict.Kept;

    /// <summary>A verdict before it is put in words.</summary>
    /// <param name="Reason">Why it is not judged; null when it is.</param>
    /// <param name="Softened">It would be broken, but rests on an estimated threshold.</param>
    internal readonly record struct Call(Verdict Verdict, string? Reason = null, bool Softened = false)
    {
        /// <summary>Worth naming among what is to change.</summary>
        public bool IsWanting => Verdict is Verdict.Watch or Verdict.Broken;
    }
}
