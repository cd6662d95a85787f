using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;

namespace RideAudit.Fit.Tests;

/// <summary>Describes an assembly's public types and members, one line each, in a fixed order.</summary>
internal static class PublicApi
{
    private static readonly HashSet<string> RecordPlumbing = ["Equals", "GetHashCode", "ToString", "Deconstruct", "<Clone>$", "PrintMembers", "op_Equality", "op_Inequality", "GetType"];

    public static string Describe(Assembly assembly)
    {
        StringBuilder text = new();
        foreach (var type in assembly.GetExportedTypes().OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            text.Append(Kind(type)).Append(' ').Append(type.FullName).Append('\n');
            foreach (var member in Members(type).Order(StringComparer.Ordinal))
                text.Append("    ").Append(member).Append('\n');
        }

        return text.ToString();
    }

    private static string Kind(Type type) => type switch
    {
        { IsEnum: true } => $"enum({Name(Enum.GetUnderlyingType(type))})",
        { IsInterface: true } => "interface",
        { IsValueType: true } => "struct",
        { IsAbstract: true, IsSealed: true } => "static class",
        { IsSealed: true } => "sealed class",
        _ => "class",
    };

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
            return Enum.GetNames(type).Select(n => $"{n} = {Convert.ToInt64(Enum.Parse(type, n), System.Globalization.CultureInfo.InvariantCulture)}");
        const BindingFlags all = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        return [
            .. type.GetConstructors(all).Select(c => $"new({Parameters(c)})"),
            .. type.GetFields(all).Select(f => $"{(f.IsLiteral ? "const " : "")}{Name(f.FieldType)} {f.Name}"),
            .. type.GetProperties(all).Where(p => p.Name != "EqualityContract").Select(Property),
            .. type.GetMethods(all).Where(m => !IsPlumbing(m)).Select(m => $"{(m.IsStatic ? "static " : "")}{Name(m.ReturnType)} {m.Name}({Parameters(m)})"),
        ];
    }

    private static bool IsPlumbing(MethodInfo method) =>
        RecordPlumbing.Contains(method.Name) || (method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal));

    private static string Property(PropertyInfo property)
    {
        var set = property.SetMethod is not { IsPublic: true } setter ? ""
            : setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? " init;" : " set;";
        return $"{(property.GetMethod!.IsStatic ? "static " : "")}{Name(property.PropertyType)} {property.Name} {{ get;{set} }}";
    }

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(p =>
        $"{Name(p.ParameterType)} {p.Name}{(p.HasDefaultValue ? $" = {p.DefaultValue ?? "default"}" : "")}"));

    private static string Name(Type type)
    {
        if (type.IsByRef)
            return "ref " + Name(type.GetElementType()!);
        if (type.IsArray)
            return Name(type.GetElementType()!) + "[]";
        if (Nullable.GetUnderlyingType(type) is { } value)
            return Name(value) + "?";
        return type.IsGenericType ? $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(Name))}>" : type.Name;
    }
}
