using System.Reflection;
using System.Runtime.CompilerServices;

namespace Doughwright.Engine.Tests.House;

/// <summary>The public types and members of an assembly, one a line, in a steady order.</summary>
internal static class Surface
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static IEnumerable<string> Of(Assembly assembly)
    {
        foreach (var type in Types(assembly))
        {
            yield return $"{KindOf(type)} {NameOf(type)}";
            foreach (var line in Members(type).Select(Line).Order(StringComparer.Ordinal))
            {
                yield return $"    {line}";
            }
        }
    }

    /// <summary>Names, as the documentation file writes them, of types and of methods a person wrote; operators explain themselves, and
    /// so do quantities made from a number with its unit in the name.</summary>
    public static IEnumerable<string> NamesToDocument(Assembly assembly) =>
        Types(assembly).Select(type => $"T:{DocName(type)}")
            .Concat(Types(assembly).SelectMany(type => Members(type).OfType<MethodInfo>().Where(MustBeTold).Select(method => DocName(type, method))))
            .Distinct();

    private static IEnumerable<Type> Types(Assembly assembly) => assembly.GetExportedTypes().OrderBy(type => type.FullName, StringComparer.Ordinal);

    private static IEnumerable<MemberInfo> Members(Type type) => type.GetMembers(Own)
        .Where(member => !member.IsDefined(typeof(CompilerGeneratedAttribute)) && member is not Type)
        .Where(member => member is not MethodInfo { IsSpecialName: true } method || method.Name.StartsWith("op_", StringComparison.Ordinal))
        .Where(member => member is not FieldInfo { IsSpecialName: true });

    private static bool MustBeTold(MethodInfo method) => !method.IsSpecialName && method.GetBaseDefinition() == method
        && method.Name is not ("CompareTo" or "Equals" or "ToString" or "GetHashCode") && !method.Name.Contains('.')
        && !(method.DeclaringType!.Namespace!.EndsWith("Quantities", StringComparison.Ordinal) && method.Name.StartsWith("From", StringComparison.Ordinal));

    private static string KindOf(Type type) => type switch
    {
        { IsEnum: true } => "enum",
        { IsInterface: true } => "interface",
        { IsValueType: true } => "struct",
        { IsAbstract: true, IsSealed: true } => "static class",
        { IsAbstract: true } => "abstract class",
        _ => "class",
    };

    private static string Line(MemberInfo member) => member switch
    {
        FieldInfo { DeclaringType.IsEnum: true } field => field.Name,
        FieldInfo field => $"{(field.IsStatic ? "static " : "")}{NameOf(field.FieldType)} {field.Name}",
        PropertyInfo property => $"{(property.GetMethod?.IsStatic == true ? "static " : "")}{NameOf(property.PropertyType)} {property.Name} {{ {Accessors(property)} }}",
        ConstructorInfo made => $"new({Parameters(made)})",
        MethodInfo method => $"{(method.IsStatic ? "static " : "")}{NameOf(method.ReturnType)} {method.Name}({Parameters(method)})",
        _ => member.ToString()!,
    };

    private static string Accessors(PropertyInfo property) => property.SetMethod is not { IsPublic: true } set ? "get"
        : set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? "get init"
        : "get set";

    private static string Parameters(MethodBase method) =>
        string.Join(", ", method.GetParameters().Select(parameter => $"{NameOf(parameter.ParameterType)} {parameter.Name}"));

    private static string NameOf(Type type)
    {
        if (Nullable.GetUnderlyingType(type) is { } inner)
        {
            return NameOf(inner) + "?";
        }

        if (type.IsArray || type.IsByRef)
        {
            return NameOf(type.GetElementType()!) + (type.IsArray ? "[]" : "&");
        }

        var name = (type.Namespace?.StartsWith("Doughwright.Engine", StringComparison.Ordinal) == true ? type.FullName ?? type.Name : type.Name)
            .Replace("Doughwright.Engine.", "", StringComparison.Ordinal).Split('[')[0].Split('`')[0].Replace('+', '.');
        return type.IsGenericType ? $"{name}<{string.Join(", ", type.GetGenericArguments().Select(NameOf))}>" : name;
    }

    private static string DocName(Type type) => type.FullName!.Replace('+', '.');

    private static string DocName(Type type, MethodInfo method) =>
        $"M:{DocName(type)}.{method.Name}{(method.IsGenericMethod ? $"``{method.GetGenericArguments().Length}" : "")}";
}
