"""Follows what every name of a template stands for, and tells each ``a.b`` that its view does not have.

A small checker of types: it walks the tree that jinja makes of a template, with the classes of the
views. What it cannot know (a filter's result, a text) it lets pass; a name nobody gave it does not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import reduce
from operator import or_
from types import NoneType, UnionType
from typing import Any, Union, get_args, get_origin, get_type_hints

from jinja2 import Environment, nodes

Type = Any
"""A class, a generic of one, a union, or ``Any``."""
Includes = Callable[[str, "Scope"], Iterator[tuple[str, dict[str, Type]]]]
"""The templates that an include with a computed name may mean, each with the names it adds."""


@dataclass
class Scope:
    """What stands for what, at one spot of one template."""

    template: str
    names: dict[str, Type]
    macros: dict[str, tuple[str, nodes.Macro]] = field(default_factory=dict)

    def within(self, **names: Type) -> Scope:
        """The same spot, where more names stand for something."""
        return Scope(self.template, {**self.names, **names}, self.macros)


class Checker:
    """Walks templates and gathers what is wrong."""

    def __init__(self, environment: Environment, includes: Includes) -> None:
        self.problems: list[str] = []
        self.templates: set[str] = set()
        """Every template that was looked at."""
        self._environment = environment
        self._includes = includes
        self._seen: set[str] = set()

    def check(self, template: str, names: Mapping[str, Type]) -> None:
        """One template, with what it is given."""
        self._template(Scope(template, dict(names)))

    def _template(self, scope: Scope) -> None:
        key = f"{scope.template} {sorted((name, str(one)) for name, one in scope.names.items())}"
        if key in self._seen:
            return
        self._seen.add(key)
        self._all(self._parsed(scope.template).body, scope)

    def _parsed(self, template: str) -> nodes.Template:
        self.templates.add(template)
        loader = self._environment.loader
        assert loader
        return self._environment.parse(loader.get_source(self._environment, template)[0], template)

    def _all(self, body: list[nodes.Node], scope: Scope) -> None:
        for node in body:
            self._statement(node, scope)

    def _statement(self, node: nodes.Node, scope: Scope) -> None:
        match node:
            case nodes.For():
                item = element(self._type(node.iter, scope))
                inner = scope.within(loop=Any, **bound(node.target, item))
                if node.test:
                    self._type(node.test, inner)
                self._all([*node.body, *node.else_], inner)
            case nodes.With():
                given = [self._type(value, scope) for value in node.values]
                inner = scope
                for target, one in zip(node.targets, given, strict=True):
                    inner = inner.within(**bound(target, one))
                self._all(node.body, inner)
            case nodes.Assign():
                scope.names.update(bound(node.target, self._type(node.node, scope)))
            case nodes.Macro():
                scope.macros[node.name] = (scope.template, node)
            case nodes.FromImport():
                self._import(node, scope)
            case nodes.Extends():
                self._template(Scope(self._constant(node.template), dict(scope.names)))
            case nodes.Include():
                self._include(node, scope)
            case nodes.Expr():
                self._type(node, scope)
            case _:
                for child in node.iter_child_nodes():
                    self._statement(child, scope)

    def _import(self, node: nodes.FromImport, scope: Scope) -> None:
        given = scope.names if node.with_context else {}
        other = Scope(self._constant(node.template), dict(given))
        self._all(self._parsed(other.template).body, other)
        for name in node.names:
            original, own = name if isinstance(name, tuple) else (name, name)
            scope.macros[own] = other.macros[original]
            scope.macros |= {f"{other.template} {key}": one for key, one in other.macros.items()}

    def _include(self, node: nodes.Include, scope: Scope) -> None:
        if isinstance(node.template, nodes.Const):
            self._template(Scope(str(node.template.value), dict(scope.names)))
            return
        self._type(node.template, scope)
        pattern = "*".join(
            str(part.value)
            for part in node.template.iter_child_nodes()
            if isinstance(part, nodes.Const)
        )
        for template, names in self._includes(pattern, scope):
            self._template(Scope(template, {**scope.names, **names}))

    def _constant(self, node: nodes.Expr) -> str:
        assert isinstance(node, nodes.Const)
        return str(node.value)

    def _type(self, node: nodes.Node, scope: Scope) -> Type:
        """What an expression stands for; everything inside it is looked at."""
        match node:
            case nodes.Name():
                if node.name not in scope.names and node.name not in {"range", *scope.macros}:
                    self._tell(scope, node, f"nothing is called {node.name}")
                return scope.names.get(node.name, Any)
            case nodes.Getattr():
                return self._attribute(node, scope)
            case nodes.Getitem():
                self._type(node.arg, scope)
                return element(self._type(node.node, scope))
            case nodes.Call():
                return self._call(node, scope)
            case nodes.Filter() if node.node and node.name in {"first", "list"}:
                inner = self._type(node.node, scope)
                return element(inner) if node.name == "first" else inner
            case nodes.CondExpr():
                self._type(node.test, scope)
                parts = [self._type(one, scope) for one in (node.expr1, node.expr2) if one]
                return next((one for one in parts if one is not str), str)
            case nodes.Const():
                return type(node.value)
            case nodes.List() | nodes.Tuple():
                kinds = [self._type(one, scope) for one in node.items]
                return tuple[kinds[0], ...] if kinds else tuple[Any, ...]
        for child in node.iter_child_nodes():
            self._type(child, scope)
        return Any

    def _attribute(self, node: nodes.Getattr, scope: Scope) -> Type:
        owner = without_none(self._type(node.node, scope))
        if owner is Any:
            return Any
        found = attribute(owner, node.attr)
        if found is None:
            self._tell(scope, node, f"{getattr(owner, '__name__', owner)} has no {node.attr}")
        return Any if found is None else found

    def _call(self, node: nodes.Call, scope: Scope) -> Type:
        given = [self._type(one, scope) for one in node.args]
        named = {one.key: self._type(one.value, scope) for one in node.kwargs}
        if not isinstance(node.node, nodes.Name) or node.node.name not in scope.macros:
            called = self._type(node.node, scope)
            return returned(called)
        template, macro = scope.macros[node.node.name]
        names = [one.name for one in macro.args]
        defaults = dict.fromkeys(names[len(names) - len(macro.defaults) :], Any)
        arguments = {**defaults, **dict(zip(names, given, strict=False)), **named}
        key = f"{template} {macro.name} {sorted((n, str(t)) for n, t in arguments.items())}"
        if key not in self._seen:
            self._seen.add(key)
            own = {
                k.partition(" ")[2]: m for k, m in scope.macros.items() if k.startswith(template)
            }
            inner = Scope(template, {**scope.names, **arguments}, {**scope.macros, **own})
            self._all(macro.body, inner)
        return str

    def _tell(self, scope: Scope, node: nodes.Node, what: str) -> None:
        line = f"{scope.template}:{node.lineno}: {what}"
        if line not in self.problems:
            self.problems.append(line)


def attribute(owner: Type, name: str) -> Type | None:
    """What ``owner.name`` stands for; nothing where the class has no such thing."""
    if get_origin(owner) in {Union, UnionType}:
        every = [attribute(one, name) for one in get_args(owner)]
        return None if None in every else every[0]
    kind = get_origin(owner) or owner
    hints = get_type_hints(kind) if isinstance(kind, type) else {}
    if name in hints:
        return hints[name]
    there = getattr(kind, name, None)
    if isinstance(there, property):
        return get_type_hints(there.fget).get("return", Any)
    return there


def element(many: Type) -> Type:
    """What a loop over it gives."""
    many = without_none(many)
    inside = [one for one in get_args(many) if one is not Ellipsis]
    if get_origin(many) is tuple and len(set(map(str, inside))) > 1:
        return Any
    return inside[0] if inside else Any


def bound(target: nodes.Node, given: Type) -> dict[str, Type]:
    """Names that take something apart, or the one that takes it whole."""
    if isinstance(target, nodes.Name):
        return {target.name: given}
    assert isinstance(target, nodes.Tuple)
    parts = [one for one in get_args(given) if one is not Ellipsis]
    if len(parts) != len(target.items):
        parts = [parts[0] if len(parts) == 1 else Any] * len(target.items)
    return {
        name: one
        for item, part in zip(target.items, parts, strict=True)
        for name, one in bound(item, part).items()
    }


def returned(called: Type) -> Type:
    """What calling it gives."""
    hints = get_type_hints(called) if callable(called) and not isinstance(called, type) else {}
    return hints.get("return", Any)


def without_none(one: Type) -> Type:
    """A type where it is there: templates ask first."""
    if get_origin(one) not in {Union, UnionType}:
        return one
    rest = [part for part in get_args(one) if part is not NoneType]
    return reduce(or_, rest)
