using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace RideAudit.Cli.Tests.Layout;

/// <summary>Reads from an assembly which types each of its types mentions, in signatures and in method bodies.</summary>
/// <remarks>Nested types, lambdas and iterators count as their outermost type. Constants are gone from compiled code, so a use of nothing but a constant is not seen.</remarks>
internal sealed class CompiledReferences : ISignatureTypeProvider<ImmutableArray<CompiledReferences.Type>, object?>
{
    private static readonly Dictionary<int, OpCode> Instructions = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(o => (int)(ushort)o.Value);

    private readonly MetadataReader _metadata;
    private readonly PEReader _image;
    private readonly HashSet<(Type From, Type To)> _found = [];
    private Type _from;

    private CompiledReferences(PEReader image)
    {
        _image = image;
        _metadata = image.GetMetadataReader();
    }

    /// <summary>A type by its names; it may belong to another assembly.</summary>
    public readonly record struct Type(string Namespace, string Name);

    /// <param name="assembly">Path of the assembly's file.</param>
    /// <returns>Each type of the assembly with each other one that it mentions.</returns>
    public static IReadOnlySet<(Type From, Type To)> In(string assembly)
    {
        using var image = new PEReader(File.OpenRead(assembly));
        var reader = new CompiledReferences(image);
        foreach (var handle in reader._metadata.TypeDefinitions)
            reader.ReadType(handle);
        return reader._found;
    }

    private void ReadType(TypeDefinitionHandle handle)
    {
        _from = Outermost(handle);
        var type = _metadata.GetTypeDefinition(handle);
        Mention(type.BaseType);
        foreach (var implemented in type.GetInterfaceImplementations())
            Mention(_metadata.GetInterfaceImplementation(implemented).Interface);
        foreach (var parameter in type.GetGenericParameters())
            foreach (var constraint in _metadata.GetGenericParameter(parameter).GetConstraints())
                Mention(_metadata.GetGenericParameterConstraint(constraint).Type);
        foreach (var attribute in type.GetCustomAttributes())
            Mention(_metadata.GetCustomAttribute(attribute).Constructor);
        foreach (var field in type.GetFields())
            Mention(_metadata.GetFieldDefinition(field).DecodeSignature(this, null));
        foreach (var method in type.GetMethods())
            ReadMethod(_metadata.GetMethodDefinition(method));
    }

    private void ReadMethod(MethodDefinition method)
    {
        Mention(method.DecodeSignature(this, null));
        if (method.RelativeVirtualAddress == 0)
            return;
        var body = _image.GetMethodBody(method.RelativeVirtualAddress);
        if (!body.LocalSignature.IsNil)
            Mention([.. _metadata.GetStandaloneSignature(body.LocalSignature).DecodeLocalSignature(this, null).SelectMany(t => t)]);
        foreach (var region in body.ExceptionRegions)
            Mention(region.CatchType);
        ReadCode(body.GetILReader());
    }

    private void ReadCode(BlobReader code)
    {
        while (code.RemainingBytes > 0)
        {
            int value = code.ReadByte();
            var instruction = Instructions[value == 0xFE ? value << 8 | code.ReadByte() : value];
            switch (instruction.OperandType)
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    Mention((EntityHandle)System.Reflection.Metadata.Ecma335.MetadataTokens.Handle(code.ReadInt32()));
                    break;
                case OperandType.InlineSwitch:
                    code.Offset += 4 * code.ReadInt32() + 4;
                    break;
                default:
                    code.Offset += SizeOf(instruction.OperandType);
                    break;
            }
        }
    }

    private static int SizeOf(OperandType operand) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        _ => 4,
    };

    private void Mention(EntityHandle handle)
    {
        if (handle.IsNil)
            return;
        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                Mention([Outermost((TypeDefinitionHandle)handle)]);
                break;
            case HandleKind.TypeReference:
                Mention([Outermost((TypeReferenceHandle)handle)]);
                break;
            case HandleKind.TypeSpecification:
                Mention(_metadata.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, null));
                break;
            case HandleKind.FieldDefinition:
                Mention(_metadata.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MethodDefinition:
                Mention(_metadata.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MemberReference:
                Mention(_metadata.GetMemberReference((MemberReferenceHandle)handle).Parent);
                break;
            case HandleKind.MethodSpecification:
                var generic = _metadata.GetMethodSpecification((MethodSpecificationHandle)handle);
                Mention(generic.Method);
                Mention([.. generic.DecodeSignature(this, null).SelectMany(t => t)]);
                break;
        }
    }

    private void Mention(MethodSignature<ImmutableArray<Type>> signature)
    {
        Mention(signature.ReturnType);
        Mention([.. signature.ParameterTypes.SelectMany(t => t)]);
    }

    private void Mention(ImmutableArray<Type> types)
    {
        foreach (var type in types)
            if (type != _from)
                _found.Add((_from, type));
    }

    private Type Outermost(TypeDefinitionHandle handle)
    {
        var type = _metadata.GetTypeDefinition(handle);
        return type.GetDeclaringType() is { IsNil: false } declaring
            ? Outermost(declaring)
            : new Type(_metadata.GetString(type.Namespace), _metadata.GetString(type.Name));
    }

    private Type Outermost(TypeReferenceHandle handle)
    {
        var type = _metadata.GetTypeReference(handle);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? Outermost((TypeReferenceHandle)type.ResolutionScope)
            : new Type(_metadata.GetString(type.Namespace), _metadata.GetString(type.Name));
    }

    ImmutableArray<Type> ISimpleTypeProvider<ImmutableArray<Type>>.GetPrimitiveType(PrimitiveTypeCode typeCode) => [];

    ImmutableArray<Type> ISimpleTypeProvider<ImmutableArray<Type>>.GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => [Outermost(handle)];

    ImmutableArray<Type> ISimpleTypeProvider<ImmutableArray<Type>>.GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => [Outermost(handle)];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    ImmutableArray<Type> ISZArrayTypeProvider<ImmutableArray<Type>>.GetSZArrayType(ImmutableArray<Type> elementType) => elementType;

    ImmutableArray<Type> IConstructedTypeProvider<ImmutableArray<Type>>.GetArrayType(ImmutableArray<Type> elementType, ArrayShape shape) => elementType;

    ImmutableArray<Type> IConstructedTypeProvider<ImmutableArray<Type>>.GetByReferenceType(ImmutableArray<Type> elementType) => elementType;

    ImmutableArray<Type> IConstructedTypeProvider<ImmutableArray<Type>>.GetPointerType(ImmutableArray<Type> elementType) => elementType;

    ImmutableArray<Type> IConstructedTypeProvider<ImmutableArray<Type>>.GetGenericInstantiation(ImmutableArray<Type> genericType, ImmutableArray<ImmutableArray<Type>> typeArguments) =>
        [.. genericType, .. typeArguments.SelectMany(t => t)];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetFunctionPointerType(MethodSignature<ImmutableArray<Type>> signature) =>
        [.. signature.ReturnType, .. signature.ParameterTypes.SelectMany(t => t)];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetGenericMethodParameter(object? genericContext, int index) => [];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetGenericTypeParameter(object? genericContext, int index) => [];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetModifiedType(ImmutableArray<Type> modifier, ImmutableArray<Type> unmodifiedType, bool isRequired) => [.. modifier, .. unmodifiedType];

    ImmutableArray<Type> ISignatureTypeProvider<ImmutableArray<Type>, object?>.GetPinnedType(ImmutableArray<Type> elementType) => elementType;
}
