package faultcase

var demoCases []Case
