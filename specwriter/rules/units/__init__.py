"""Rules on units: conversion, which system governs, and the places to which values are written."""
