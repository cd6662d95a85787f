using System.Reflection;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace RideAudit.Mutation;

/// <summary>One test, to be run any number of times.</summary>
internal sealed class OneTest(IXunitTestCase test)
{
    /// <summary>Its identity and what it says.</summary>
    public string Name { get; } = $"{test.UniqueID} {test.DisplayName}";

    /// <param name="namespaces">Below RideAudit.Tests; a word after an exclamation mark leaves out tests whose name holds it.</param>
    public static List<OneTest> In(Assembly assembly, string[] namespaces)
    {
        var found = new Found();
        using var framework = new XunitTestFramework(new Nowhere());
        using var discoverer = framework.GetDiscoverer(Reflector.Wrap(assembly));
        discoverer.Find(false, found, new NoOptions());
        found.Ended.Wait();
        return [.. found.Cases.Where(c => IsWanted(c, namespaces)).OrderBy(c => c.UniqueID, StringComparer.Ordinal).Select(c => new OneTest(c))];
    }

    public bool Passes()
    {
        using var nowhere = new Nowhere();
        var parameters = test.TestMethod.TestClass.Class.ToRuntimeType().GetConstructors()[0].GetParameters();
        var outputs = parameters.Select(_ => (object)OutputTo(nowhere)).ToArray();
        using var ended = new CancellationTokenSource();
        return test.RunAsync(nowhere, nowhere, outputs, new ExceptionAggregator(), ended).GetAwaiter().GetResult().Failed == 0;
    }

    private static bool IsWanted(IXunitTestCase test, string[] namespaces) =>
        namespaces.Any(n => test.TestMethod.TestClass.Class.Name.StartsWith($"RideAudit.Tests.{n}.", StringComparison.Ordinal))
        && !namespaces.Any(n => n.StartsWith('!') && test.DisplayName.Contains(n[1..], StringComparison.Ordinal));

    private TestOutputHelper OutputTo(IMessageBus bus)
    {
        var output = new TestOutputHelper();
        output.Initialize(bus, new XunitTest(test, test.DisplayName));
        return output;
    }

    private sealed class Nowhere : IMessageBus, IMessageSink
    {
        public bool QueueMessage(IMessageSinkMessage message) => true;

        public bool OnMessage(IMessageSinkMessage message) => true;

        public void Dispose()
        {
        }
    }

    private sealed class Found : IMessageSink
    {
        public List<IXunitTestCase> Cases { get; } = [];

        public ManualResetEventSlim Ended { get; } = new();

        public bool OnMessage(IMessageSinkMessage message)
        {
            if (message is ITestCaseDiscoveryMessage { TestCase: IXunitTestCase test })
                Cases.Add(test);
            if (message is IDiscoveryCompleteMessage)
                Ended.Set();
            return true;
        }
    }

    private sealed class NoOptions : ITestFrameworkDiscoveryOptions
    {
        public TValue GetValue<TValue>(string name) => default!;

        public void SetValue<TValue>(string name, TValue value)
        {
        }
    }
}
