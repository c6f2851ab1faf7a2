"""Frozen data: what a lesson, a food and a move are."""
